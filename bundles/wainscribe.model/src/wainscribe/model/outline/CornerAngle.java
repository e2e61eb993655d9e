// SPDX-License-Identifier: EPL-2.0
package wainscribe.model.outline;

import java.math.BigDecimal;
import java.math.MathContext;

import wainscribe.model.Corner;
import wainscribe.model.Wall;

/** The inside angle at the right end of a wall, in degrees. */
public final class CornerAngle {

	private static final BigDecimal SQUARE = BigDecimal.valueOf(90);
	private static final BigDecimal STRAIGHT = BigDecimal.valueOf(180);
	private static final BigDecimal FULL_TURN = BigDecimal.valueOf(360);
	private static final int PLACES = 6;

	private CornerAngle() {
	}

	/**
	 * Returns the angle to the next wall: by the measured triangle (cosine rule) if there is one, else the angle given, else
	 * 90. A triangle cannot tell an inside corner from an outside one; the angle given does, if it is above 180.
	 *
	 * @return degrees, above 0 and under 360; a triangle gives six decimals
	 */
	public static BigDecimal of(Wall wall) {
		Corner corner = wall.getCorner();
		if (corner != null && corner.getLegThis() != null && corner.getLegNext() != null && corner.getDiagonal() != null) {
			BigDecimal triangle = ofTriangle(corner.getLegThis().approximateMillimetres(), corner.getLegNext().approximateMillimetres(),
					corner.getDiagonal().approximateMillimetres());
			boolean isOutside = wall.getAngle() != null && wall.getAngle().compareTo(STRAIGHT) > 0;
			return isOutside ? FULL_TURN.subtract(triangle) : triangle;
		}
		return wall.getAngle() == null ? SQUARE : wall.getAngle();
	}

	private static BigDecimal ofTriangle(double a, double b, double c) {
		double cosine = (a * a + b * b - c * c) / (2 * a * b);
		double degrees = Math.toDegrees(Math.acos(Math.max(-1, Math.min(1, cosine))));
		return new BigDecimal(degrees, MathContext.DECIMAL64).setScale(PLACES, java.math.RoundingMode.HALF_UP);
	}
}
