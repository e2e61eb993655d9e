// SPDX-License-Identifier: EPL-2.0
package wainscribe.fabrication;

import java.math.BigDecimal;
import java.util.Objects;

/**
 * One end of a piece: what it meets and how the saw is set.
 *
 * @param joint    what it meets
 * @param turn     turn of the saw's table in degrees from a square cut, never negative
 * @param tilt     tilt of the blade in degrees from upright, never negative
 * @param longSide where the long point lies
 */
public record PieceEnd(Joint joint, BigDecimal turn, BigDecimal tilt, LongSide longSide) {

	/** Most saws turn and tilt no further; common practice. */
	private static final BigDecimal SAW_REACH = BigDecimal.valueOf(50);

	/** Refuses nulls. */
	public PieceEnd {
		Objects.requireNonNull(joint);
		Objects.requireNonNull(turn);
		Objects.requireNonNull(tilt);
		Objects.requireNonNull(longSide);
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
