// SPDX-License-Identifier: EPL-2.0
package wainscribe.fabrication;

import wainscribe.model.length.Length;

/**
 * A clear stretch of a wall for a run of moulding.
 *
 * @param x0    left end, from the wall's left end
 * @param x1    right end
 * @param left  what stops it at the left
 * @param right what stops it at the right
 */
record Stretch(Length x0, Length x1, Stop left, Stop right) {

	/** What stops a run. */
	enum Stop {
		/** The end of the wall. */
		CORNER,
		/** The casing of a door or window. */
		CASING,
		/** A fixture, or the distance it needs. */
		FIXTURE,
		/** Moulding that stays. */
		TRIM
	}
}
