// SPDX-License-Identifier: EPL-2.0
package wainscribe.report.view;

/**
 * A paint.
 *
 * @param name    its name
 * @param surface where it goes
 * @param colour  as {@code #rrggbb}; empty while none was chosen
 * @param details gloss, binder, coats and preparation
 */
public record PaintView(String name, String surface, String colour, String details) {
}
