// SPDX-License-Identifier: EPL-2.0
package wainscribe.finishes.colour;

/**
 * CIELAB lightness and opponent coordinates. Source: ISO/CIE 11664-4:2019.
 *
 * @param lightness L*, 0 for black and 100 for a perfect white
 * @param a green (negative) to red
 * @param b blue (negative) to yellow
 */
public record Lab(double lightness, double a, double b) {

	private static final double LINEAR_BELOW = 216.0 / 24389;
	private static final double SLOPE = 24389.0 / 27;
	/** The white of a screen and the row sums of its matrix differ by less. */
	private static final double GREY = 5e-4;

	/** Refuses what is no number. */
	public Lab {
		if (!Double.isFinite(lightness) || !Double.isFinite(a) || !Double.isFinite(b)) {
			throw new IllegalArgumentException("CIELAB coordinates are finite numbers"); //$NON-NLS-1$
		}
	}

	/** Returns the coordinates of a colour seen beside the white. */
	public static Lab of(Xyz colour, Xyz white) {
		double x = compressed(colour.x() / white.x());
		double y = compressed(colour.y() / white.y());
		double z = compressed(colour.z() / white.z());
		return new Lab(116 * y - 16, 500 * (x - y), 200 * (y - z));
	}

	/** Returns the tristimulus values of this colour beside the white. */
	public Xyz toXyz(Xyz white) {
		double y = (lightness + 16) / 116;
		double x = y + a / 500;
		double z = y - b / 200;
		return new Xyz(white.x() * expanded(x), white.y() * expanded(y), white.z() * expanded(z));
	}

	/** Returns chroma C*, the distance from grey. */
	public double chroma() {
		return Math.hypot(a, b);
	}

	/** Returns the hue angle in degrees from 0 up to 360: 0 red, 90 yellow, 180 green, 270 blue; 0 for a grey, whose rounding has no hue. */
	public double hue() {
		if (chroma() < GREY) {
			return 0;
		}
		double degrees = Math.toDegrees(Math.atan2(b, a));
		return degrees < 0 ? degrees + 360 : degrees;
	}

	/** Returns the colour of this lightness and hue with another chroma. */
	public Lab withChroma(double chroma) {
		double now = chroma();
		return now == 0 ? this : new Lab(lightness, a * chroma / now, b * chroma / now);
	}

	private static double compressed(double ratio) {
		return ratio > LINEAR_BELOW ? Math.cbrt(ratio) : (SLOPE * ratio + 16) / 116;
	}

	private static double expanded(double value) {
		double cube = value * value * value;
		return cube > LINEAR_BELOW ? cube : (116 * value - 16) / SLOPE;
	}
}
