// SPDX-License-Identifier: EPL-2.0
package wainscribe.cutting;

import java.util.Objects;

import wainscribe.model.length.Length;

/**
 * A leftover of an earlier plan: free, and there once.
 *
 * @param label   what is written on it
 * @param profile id of the profile
 * @param length  its length; above zero
 */
public record Offcut(String label, String profile, Length length) {

	/**
	 * Checks the values.
	 *
	 * @throws IllegalArgumentException if the length is not above zero
	 */
	public Offcut {
		Objects.requireNonNull(label, "label"); //$NON-NLS-1$
		Objects.requireNonNull(profile, "profile"); //$NON-NLS-1$
		Objects.requireNonNull(length, "length"); //$NON-NLS-1$
		if (length.signum() <= 0) {
			throw new IllegalArgumentException("length of an offcut must be above zero: " + length); //$NON-NLS-1$
		}
	}
}
