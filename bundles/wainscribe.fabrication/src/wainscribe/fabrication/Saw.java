// SPDX-License-Identifier: EPL-2.0
package wainscribe.fabrication;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Objects;

import wainscribe.model.length.Length;

/**
 * A saw whose scale has steps: settings are rounded to them once, and what that leaves at the joint is stated.
 * <p>
 * A cut at turn t and tilt b runs off by tan t for each unit of the width on the table and by tan b / cos t for each unit
 * upwards. Rounded, it runs off by a little more or less; a joint closed at one edge is then open at the other by the sum
 * of both over the piece's section, square to the cut (factor cos t cos b), twice where both pieces are cut so. Plane
 * geometry, derived.
 *
 * @param step step of the scale in degrees, above zero
 */
record Saw(BigDecimal step) {

	/** Openings are stated in steps of 0.01 mm, never too small. */
	private static final double PER_MILLIMETRE = 100;

	Saw {
		Objects.requireNonNull(step);
		if (step.signum() <= 0) {
			throw new IllegalArgumentException("saw scale " + step + ": expected above 0"); //$NON-NLS-1$ //$NON-NLS-2$
		}
	}

	/** Returns a setting rounded to the scale, halves up. */
	BigDecimal rounded(BigDecimal degrees) {
		BigDecimal value = degrees.divide(step, 0, RoundingMode.HALF_UP).multiply(step).stripTrailingZeros();
		return value.scale() < 0 ? value.setScale(0) : value;
	}

	/**
	 * Sets the saw for an end.
	 *
	 * @param end   with the exact angles
	 * @param width of the piece as it lies on the table, square to its length
	 * @param rise  of the piece above the table; zero where it does not show
	 */
	PieceEnd set(PieceEnd end, Length width, Length rise) {
		BigDecimal turn = rounded(end.turn());
		BigDecimal tilt = rounded(end.tilt());
		double off = width.approximateMillimetres() * Math.abs(alongWidth(turn) - alongWidth(end.turn()))
				+ rise.approximateMillimetres() * Math.abs(upwards(turn, tilt) - upwards(end.turn(), end.tilt()));
		double square = cos(end.turn()) * cos(end.tilt());
		double open = off * square * (end.joint().isShared() ? 2 : 1);
		BigDecimal opening = BigDecimal.valueOf(Math.ceil(open * PER_MILLIMETRE - 1e-6) / PER_MILLIMETRE).setScale(2, RoundingMode.HALF_UP);
		return new PieceEnd(end.joint(), end.turn(), end.tilt(), end.longSide(), new SawSetting(turn, tilt, opening));
	}

	private static double alongWidth(BigDecimal turn) {
		return Math.tan(radians(turn));
	}

	private static double upwards(BigDecimal turn, BigDecimal tilt) {
		return Math.tan(radians(tilt)) / cos(turn);
	}

	private static double cos(BigDecimal degrees) {
		return Math.cos(radians(degrees));
	}

	private static double radians(BigDecimal degrees) {
		return Math.toRadians(degrees.doubleValue());
	}
}
