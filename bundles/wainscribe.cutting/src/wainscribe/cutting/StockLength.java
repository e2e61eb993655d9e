// SPDX-License-Identifier: EPL-2.0
package wainscribe.cutting;

import java.math.BigDecimal;
import java.util.Objects;
import java.util.OptionalInt;

import wainscribe.model.length.Length;

/**
 * A length that the shop sells.
 *
 * @param profile   id of the profile
 * @param length    length of the bar; above zero
 * @param price     price of one bar, exact, not below zero
 * @param available how many bars can be had, empty for any number
 */
public record StockLength(String profile, Length length, BigDecimal price, OptionalInt available) {

	/**
	 * Checks the values.
	 *
	 * @throws IllegalArgumentException if the length is not above zero, or price or number available below zero
	 */
	public StockLength {
		Objects.requireNonNull(profile, "profile"); //$NON-NLS-1$
		Objects.requireNonNull(length, "length"); //$NON-NLS-1$
		Objects.requireNonNull(price, "price"); //$NON-NLS-1$
		Objects.requireNonNull(available, "available"); //$NON-NLS-1$
		if (length.signum() <= 0) {
			throw new IllegalArgumentException("stock length must be above zero: " + length); //$NON-NLS-1$
		}
		if (price.signum() < 0) {
			throw new IllegalArgumentException("price must not be below zero: " + price); //$NON-NLS-1$
		}
		if (available.isPresent() && available.getAsInt() < 0) {
			throw new IllegalArgumentException("number available must not be below zero: " + available.getAsInt()); //$NON-NLS-1$
		}
	}
}
