// SPDX-License-Identifier: EPL-2.0
package wainscribe.cutting;

import java.util.Objects;

import wainscribe.model.length.Length;

/**
 * Pieces needed, all alike.
 *
 * @param label    what is written on the piece; need not be unique
 * @param profile  id of the profile it is cut from
 * @param length   cut length, over the long points; above zero
 * @param quantity how many, at least 1
 */
public record PieceDemand(String label, String profile, Length length, int quantity) {

	/**
	 * Checks the values.
	 *
	 * @throws IllegalArgumentException if the length is not above zero or the quantity below 1
	 */
	public PieceDemand {
		Objects.requireNonNull(label, "label"); //$NON-NLS-1$
		Objects.requireNonNull(profile, "profile"); //$NON-NLS-1$
		Objects.requireNonNull(length, "length"); //$NON-NLS-1$
		if (length.signum() <= 0) {
			throw new IllegalArgumentException("length of a piece must be above zero: " + length); //$NON-NLS-1$
		}
		if (quantity < 1) {
			throw new IllegalArgumentException("quantity of a piece must be at least 1: " + quantity); //$NON-NLS-1$
		}
	}
}
