// SPDX-License-Identifier: EPL-2.0
package wainscribe.fabrication;

import java.math.BigDecimal;
import java.util.Objects;

/**
 * One end of a piece: what it meets and how the saw is set; exact angles rounded to 0.0001 degree.
 *
 * @param joint    what it meets
 * @param turn     turn of the saw's table in degrees from a square cut, never negative
 * @param tilt     tilt of the blade in degrees from upright, never negative
 * @param longSide where the long point lies
 * @param setting  the same on the scale of the saw, and what the rounding leaves at the joint
 */
public record PieceEnd(Joint joint, BigDecimal turn, BigDecimal tilt, LongSide longSide, SawSetting setting) {

	/** Most saws turn and tilt no further; common practice. */
	private static final BigDecimal SAW_REACH = BigDecimal.valueOf(50);

	/** Refuses nulls. */
	public PieceEnd {
		Objects.requireNonNull(joint);
		Objects.requireNonNull(turn);
		Objects.requireNonNull(tilt);
		Objects.requireNonNull(longSide);
		Objects.requireNonNull(setting);
	}

	/** Creates an end for a saw that can be set to any angle. */
	public PieceEnd(Joint joint, BigDecimal turn, BigDecimal tilt, LongSide longSide) {
		this(joint, turn, tilt, longSide, new SawSetting(turn, tilt, BigDecimal.ZERO.setScale(2)));
	}

	/** Returns a square end. */
	public static PieceEnd square(Joint joint) {
		return new PieceEnd(joint, BigDecimal.ZERO, BigDecimal.ZERO, LongSide.NONE);
	}

	/** Tells whether many saws do not reach the setting, so that a wedge under the piece or a jig is needed. */
	public boolean isBeyondSaw() {
		return turn.compareTo(SAW_REACH) > 0 || tilt.compareTo(SAW_REACH) > 0;
	}
}
