// SPDX-License-Identifier: EPL-2.0
package wainscribe.rules.paint;

import java.math.BigDecimal;
import java.math.RoundingMode;

import wainscribe.rules.RuleContext;

/** The air of a room that is to be painted. */
final class PaintingAir {

	private static final double A = 17.62;
	private static final double B = 243.12;

	private PaintingAir() {
	}

	/** Tells whether anything is to be painted in the room. */
	static boolean isPainted(RuleContext context) {
		return !RoomPaints.of(context).isEmpty();
	}

	/**
	 * Returns the dew point by the Magnus form with 17.62 and 243.12, which keeps within 0.04 degrees of the steam tables
	 * above 0 degrees Celsius.
	 *
	 * @param temperature degrees Celsius
	 * @param humidity    relative humidity in per cent, above 0
	 */
	static BigDecimal dewPoint(BigDecimal temperature, BigDecimal humidity) {
		double t = temperature.doubleValue();
		double g = Math.log(humidity.doubleValue() / 100) + A * t / (B + t);
		return BigDecimal.valueOf(B * g / (A - g)).setScale(2, RoundingMode.HALF_UP);
	}

	/** Writes a temperature or a share with at most one decimal. */
	static String shown(BigDecimal amount) {
		BigDecimal rounded = amount.setScale(1, RoundingMode.HALF_UP).stripTrailingZeros();
		return (rounded.scale() < 0 ? rounded.setScale(0) : rounded).toPlainString();
	}
}
