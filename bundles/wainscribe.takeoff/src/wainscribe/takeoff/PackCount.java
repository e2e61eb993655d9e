// SPDX-License-Identifier: EPL-2.0
package wainscribe.takeoff;

import java.math.BigDecimal;
import java.util.Objects;

/**
 * Packs of one size.
 *
 * @param count     how many to buy
 * @param size      how much one holds
 * @param unit      unit of the size
 * @param unitPrice price of one, in the home's currency before tax; null while unpriced
 */
public record PackCount(int count, BigDecimal size, String unit, BigDecimal unitPrice) {

	/** Refuses nulls but for the price. */
	public PackCount {
		Objects.requireNonNull(size);
		Objects.requireNonNull(unit);
	}
}
