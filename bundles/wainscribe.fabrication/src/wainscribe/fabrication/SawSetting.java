// SPDX-License-Identifier: EPL-2.0
package wainscribe.fabrication;

import java.math.BigDecimal;
import java.util.Objects;

/**
 * How the saw is set for an end, on the scale it has.
 *
 * @param turn    turn of the table from a square cut in degrees, rounded to the scale
 * @param tilt    tilt of the blade from upright in degrees, rounded to the scale
 * @param opening how far the joint is open at most because of the rounding, in millimetres, when it is closed at one edge and
 *                the pieces have their true lengths; rounded up to 0.01
 */
public record SawSetting(BigDecimal turn, BigDecimal tilt, BigDecimal opening) {

	/** Refuses nulls. */
	public SawSetting {
		Objects.requireNonNull(turn);
		Objects.requireNonNull(tilt);
		Objects.requireNonNull(opening);
	}
}
