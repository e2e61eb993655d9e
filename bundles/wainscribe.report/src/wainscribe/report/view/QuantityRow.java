// SPDX-License-Identifier: EPL-2.0
package wainscribe.report.view;

/**
 * One thing to buy.
 *
 * @param group   heading under which it stands
 * @param item    what
 * @param need    how much is needed
 * @param buy     packs to buy
 * @param formula how the need was found
 * @param source  where the rates come from
 * @param price   price of the packs; a dash while unpriced
 */
public record QuantityRow(String group, String item, String need, String buy, String formula, String source, String price) {
}
