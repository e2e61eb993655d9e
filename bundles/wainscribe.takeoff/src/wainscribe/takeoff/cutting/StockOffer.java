// SPDX-License-Identifier: EPL-2.0
package wainscribe.takeoff.cutting;

import java.math.BigDecimal;
import java.util.Objects;

import wainscribe.model.length.Length;

/**
 * A length that can be bought.
 *
 * @param length how long, above zero
 * @param price  price of one; null where only the length is known
 */
public record StockOffer(Length length, BigDecimal price) {

	/** Refuses a missing length. */
	public StockOffer {
		Objects.requireNonNull(length);
	}
}
