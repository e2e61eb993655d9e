// SPDX-License-Identifier: EPL-2.0
package wainscribe.takeoff;

import java.math.BigDecimal;

/**
 * A pack that a shop offers.
 *
 * @param size  how much it holds, above zero
 * @param price what it costs, not below zero
 */
public record Pack(BigDecimal size, BigDecimal price) {

	/** Refuses empty packs and negative prices. */
	public Pack {
		if (size.signum() <= 0 || price.signum() < 0) {
			throw new IllegalArgumentException("a pack holds something and costs nothing less than nothing: " + size + ", " + price); //$NON-NLS-1$ //$NON-NLS-2$
		}
	}
}
