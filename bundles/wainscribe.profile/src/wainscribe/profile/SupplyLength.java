// SPDX-License-Identifier: EPL-2.0
package wainscribe.profile;

import java.math.BigDecimal;
import java.util.Objects;
import java.util.Optional;

import wainscribe.model.length.Length;

/**
 * A length in which a moulding is sold.
 *
 * @param length above zero
 * @param price  for one such length in the currency of the home, not below zero; null if not known
 */
public record SupplyLength(Length length, BigDecimal price) {

	/** Refuses a null or empty length and a negative price. */
	public SupplyLength {
		Objects.requireNonNull(length);
		if (length.signum() <= 0 || price != null && price.signum() < 0) {
			throw new IllegalArgumentException("a supply length is above zero and its price not below"); //$NON-NLS-1$
		}
	}

	/** Returns the price, if it is known. */
	public Optional<BigDecimal> knownPrice() {
		return Optional.ofNullable(price);
	}
}
