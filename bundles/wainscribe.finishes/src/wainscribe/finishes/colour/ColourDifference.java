// SPDX-License-Identifier: EPL-2.0
package wainscribe.finishes.colour;

/**
 * Colour difference CIEDE2000 with parametric factors 1.
 * Source: ISO/CIE 11664-6:2014; Sharma, Wu, Dalal 2005, Color Research and Application 30(1), 21-30, doi 10.1002/col.20070.
 */
public final class ColourDifference {

	private static final double CHROMA_25_TO_7 = 6103515625.0;

	private ColourDifference() {
	}

	/** Returns the difference; about 1 is just seen side by side. */
	public static double ciede2000(Lab one, Lab other) {
		double stretch = 1 + chromaStretch((one.chroma() + other.chroma()) / 2);
		double a1 = one.a() * stretch;
		double a2 = other.a() * stretch;
		double c1 = Math.hypot(a1, one.b());
		double c2 = Math.hypot(a2, other.b());
		double h1 = hue(a1, one.b());
		double h2 = hue(a2, other.b());
		double turn = c1 * c2 == 0 ? 0 : turn(h1, h2);
		double meanLightness = (one.lightness() + other.lightness()) / 2;
		double meanChroma = (c1 + c2) / 2;
		double meanHue = c1 * c2 == 0 ? h1 + h2 : meanHue(h1, h2);

		double lightness = (other.lightness() - one.lightness()) / lightnessScale(meanLightness);
		double chroma = (c2 - c1) / chromaScale(meanChroma);
		double hue = 2 * Math.sqrt(c1 * c2) * Math.sin(Math.toRadians(turn / 2)) / hueScale(meanChroma, meanHue);
		double rotation = -Math.sin(Math.toRadians(60 * Math.exp(-square((meanHue - 275) / 25)))) * rotationStrength(meanChroma);
		return Math.sqrt(Math.max(0, lightness * lightness + chroma * chroma + hue * hue + rotation * chroma * hue));
	}

	/** How far a* is stretched for greys, G of the formula; falls with chroma. */
	static double chromaStretch(double meanChroma) {
		double power = Math.pow(meanChroma, 7);
		return 0.5 * (1 - Math.sqrt(power / (power + CHROMA_25_TO_7)));
	}

	/** S_L of the formula; grows with the distance from L* = 50. */
	static double lightnessScale(double meanLightness) {
		double off = square(meanLightness - 50);
		return 1 + 0.015 * off / Math.sqrt(20 + off);
	}

	/** S_C of the formula. */
	static double chromaScale(double meanChroma) {
		return 1 + 0.045 * meanChroma;
	}

	/** R_C of the formula; grows with chroma up to 2. */
	static double rotationStrength(double meanChroma) {
		double power = Math.pow(meanChroma, 7);
		return 2 * Math.sqrt(power / (power + CHROMA_25_TO_7));
	}

	private static double hueScale(double meanChroma, double meanHue) {
		double t = 1 - 0.17 * cosine(meanHue - 30) + 0.24 * cosine(2 * meanHue) + 0.32 * cosine(3 * meanHue + 6)
				- 0.20 * cosine(4 * meanHue - 63);
		return 1 + 0.015 * meanChroma * t;
	}

	private static double hue(double a, double b) {
		double degrees = Math.toDegrees(Math.atan2(b, a));
		return degrees < 0 ? degrees + 360 : degrees;
	}

	private static double turn(double h1, double h2) {
		double turn = h2 - h1;
		if (turn > 180) {
			return turn - 360;
		}
		return turn < -180 ? turn + 360 : turn;
	}

	private static double meanHue(double h1, double h2) {
		if (Math.abs(h1 - h2) <= 180) {
			return (h1 + h2) / 2;
		}
		return h1 + h2 < 360 ? (h1 + h2 + 360) / 2 : (h1 + h2 - 360) / 2;
	}

	private static double cosine(double degrees) {
		return Math.cos(Math.toRadians(degrees));
	}

	private static double square(double value) {
		return value * value;
	}
}
