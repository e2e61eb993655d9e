// SPDX-License-Identifier: EPL-2.0
package wainscribe.fabrication;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.RoundingMode;

import wainscribe.model.length.Length;

/**
 * The geometry of mitred corners. Angles in degrees; results rounded once, to 0.0001 degree or 1/8000 mm.
 * <p>
 * Two pieces that meet at an angle share it: each is cut along its half, so the saw stands at 90 degrees less that half
 * (`corner-mitre-half`: woodworking magazine; the saw setting by geometry).
 */
public final class Mitre {

	private static final int PLACES = 4;
	private static final double SQUARE = 90;

	private Mitre() {
	}

	/**
	 * Returns the saw setting from square for a cut along a line that makes the given angle with the piece's length.
	 *
	 * @param cut angle between cut and length: half the corner for a mitre; 90 is a square cut
	 * @return above 0 if the edge turned to the corner's outside is the longer one, below 0 if the other is
	 */
	public static BigDecimal setting(double cut) {
		return rounded(SQUARE - cut);
	}

	/**
	 * Returns the table's turn for a sprung moulding cut lying flat: atan(sin S / tan h).
	 *
	 * @param spring angle S between the moulding's back and the wall
	 * @param cut    angle h between the cut and the wall on plan: half the corner for a mitre
	 * @return above 0 if the wall edge is the longer one, below 0 if the ceiling edge is
	 */
	public static BigDecimal flatTurn(double spring, double cut) {
		return rounded(Math.toDegrees(Math.atan2(Math.sin(Math.toRadians(spring)) * Math.cos(Math.toRadians(cut)),
				Math.sin(Math.toRadians(cut)))));
	}

	/**
	 * Returns the blade's tilt for a sprung moulding cut lying flat: asin(cos S cos h).
	 *
	 * @param spring angle S between the moulding's back and the wall
	 * @param cut    angle h between the cut and the wall on plan: half the corner for a mitre
	 */
	public static BigDecimal flatTilt(double spring, double cut) {
		return rounded(Math.toDegrees(Math.asin(Math.cos(Math.toRadians(spring)) * Math.cos(Math.toRadians(cut)))));
	}

	/**
	 * Returns how much shorter the far edge of a piece is at one end: width times the cotangent of the cut's angle.
	 *
	 * @param width distance between the two edges, square to the length
	 * @param cut   angle between cut and length
	 * @return below zero if the far edge is the longer one
	 */
	public static Length inset(Length width, double cut) {
		double cotangent = Math.cos(Math.toRadians(cut)) / Math.sin(Math.toRadians(cut));
		return new Length(Math.round(width.units() * cotangent));
	}

	/** Returns the angle of a slope, above 0 if it climbs to the right. */
	public static double pitch(Length run, Length rise) {
		return Math.toDegrees(Math.atan2(rise.units(), run.units()));
	}

	/** Returns the length of a slope, exact to the nearest 1/8000 mm. */
	public static Length sloped(Length run, Length rise) {
		if (rise.signum() == 0) {
			return run.abs();
		}
		BigInteger square = square(run).add(square(rise));
		// sqrt(4 s) is twice the root, so half of it rounded up from the odd ones is the nearest whole root.
		BigInteger twice = square.shiftLeft(2).sqrt();
		return new Length(twice.add(BigInteger.ONE).shiftRight(1).longValueExact());
	}

	private static BigInteger square(Length length) {
		BigInteger units = BigInteger.valueOf(length.units());
		return units.multiply(units);
	}

	private static BigDecimal rounded(double degrees) {
		BigDecimal value = BigDecimal.valueOf(degrees).setScale(PLACES, RoundingMode.HALF_UP).stripTrailingZeros();
		return value.scale() < 0 ? value.setScale(0) : value;
	}
}
