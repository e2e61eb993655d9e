// SPDX-License-Identifier: EPL-2.0
package wainscribe.finishes.colour;

/** A box of CIELAB with a floor under the CIEDE2000 of any of its colours from another colour. */
record LabBox(double minL, double maxL, double minA, double maxA, double minB, double maxB) {

	/** sin of the largest turn of the formula, 60 degrees. */
	private static final double STRONGEST_TURN = Math.sin(Math.toRadians(60));
	/** sin(60 exp(-((180 - 275) / 25)^2)): the turn where both colours are yellow to either side, their mean hue in 0 to 180 degrees. */
	private static final double WARM_TURN = Math.sin(Math.toRadians(60 * Math.exp(-14.44)));

	/**
	 * Returns a number that no colour of the box comes below. With the stretched a' of the formula (the same stretch for both colours of a pair)
	 * squared chroma and hue differences add up to the squared distance in (a', b); their scales are largest at the largest chroma; and the
	 * turning term takes away at most half its factor of the sum of squares.
	 */
	double floor(Lab from) {
		double lightness = apart(from.lightness(), minL, maxL);
		double scale = Math.max(ColourDifference.lightnessScale((from.lightness() + minL) / 2),
				ColourDifference.lightnessScale((from.lightness() + maxL) / 2));
		double largest = (from.chroma() + largestChroma()) / 2;
		double leastStretch = 1 + ColourDifference.chromaStretch(largest);
		double mostStretch = 1 + ColourDifference.chromaStretch((from.chroma() + leastChroma()) / 2);
		double a = leastStretch * apart(from.a(), minA, maxA);
		double b = apart(from.b(), minB, maxB);
		double stretchedChroma = mostStretch * largest;
		double turn = ColourDifference.rotationStrength(stretchedChroma) * (from.b() >= 0 && minB >= 0 ? WARM_TURN : STRONGEST_TURN);
		double plane = (1 - turn / 2) * (a * a + b * b) / square(ColourDifference.chromaScale(stretchedChroma));
		return Math.sqrt(square(lightness / scale) + plane);
	}

	private double largestChroma() {
		return Math.hypot(Math.max(Math.abs(minA), Math.abs(maxA)), Math.max(Math.abs(minB), Math.abs(maxB)));
	}

	private double leastChroma() {
		return Math.hypot(apart(0, minA, maxA), apart(0, minB, maxB));
	}

	private static double apart(double value, double low, double high) {
		return value < low ? low - value : Math.max(0, value - high);
	}

	private static double square(double value) {
		return value * value;
	}
}
