// SPDX-License-Identifier: EPL-2.0
package wainscribe.takeoff;

import java.math.BigDecimal;
import java.util.List;
import java.util.Objects;

/**
 * One thing to buy.
 *
 * @param key      what prices refer to: the id of a profile, the name of a paint, or a {@link QuantityKey}
 * @param group    heading under which it stands
 * @param item     how it is called, for the designer
 * @param formula  how the quantity was found, with the numbers put in
 * @param source   where the rates come from, or {@code common practice}
 * @param quantity how much is needed, in {@code unit}; null where it cannot be found, then the formula says why
 * @param unit     unit of the quantity
 * @param packs    what to buy; empty while nothing says what a pack holds
 * @param total    price of all packs before tax, two decimals; null while unpriced
 */
public record TakeoffLine(String key, String group, String item, String formula, String source, BigDecimal quantity,
		String unit, List<PackCount> packs, BigDecimal total) {

	/** Copies the packs; refuses nulls but for quantity and total. */
	public TakeoffLine {
		Objects.requireNonNull(key);
		Objects.requireNonNull(group);
		Objects.requireNonNull(item);
		Objects.requireNonNull(formula);
		Objects.requireNonNull(source);
		Objects.requireNonNull(unit);
		packs = List.copyOf(packs);
	}

	/** Tells whether the line has a price. */
	public boolean isPriced() {
		return total != null;
	}
}
