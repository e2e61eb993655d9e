// SPDX-License-Identifier: EPL-2.0
package wainscribe.profile.section;

/**
 * The length of a cubic Bezier curve, which has no closed form: Gauss-Legendre quadrature of its speed with five nodes
 * (Abramowitz and Stegun, Handbook of Mathematical Functions, table 25.4), halved until both halves agree with the whole.
 */
record CurveLength(Spot start, Spot first, Spot second, Spot end) {

	private static final double AGREED = 1e-9;
	private static final int DEEPEST = 24;
	private static final double[] NODES = { 0, 0.538469310105683, 0.906179845938664 };
	private static final double[] WEIGHTS = { 0.568888888888889, 0.478628670499366, 0.236926885056189 };

	/** Returns the length to 0.000001 mm. */
	double millimetres() {
		return refined(0, 1, rule(0, 1), DEEPEST);
	}

	private double refined(double from, double to, double whole, int depth) {
		double middle = (from + to) / 2;
		double left = rule(from, middle);
		double right = rule(middle, to);
		if (depth == 0 || Math.abs(left + right - whole) < AGREED) {
			return left + right;
		}
		return refined(from, middle, left, depth - 1) + refined(middle, to, right, depth - 1);
	}

	private double rule(double from, double to) {
		double half = (to - from) / 2;
		double middle = (from + to) / 2;
		double sum = WEIGHTS[0] * speed(middle);
		for (int i = 1; i < NODES.length; i++) {
			sum += WEIGHTS[i] * (speed(middle - half * NODES[i]) + speed(middle + half * NODES[i]));
		}
		return sum * half;
	}

	private double speed(double share) {
		double rest = 1 - share;
		return 3 * Math.hypot(
				rest * rest * (first.x() - start.x()) + 2 * rest * share * (second.x() - first.x()) + share * share * (end.x() - second.x()),
				rest * rest * (first.y() - start.y()) + 2 * rest * share * (second.y() - first.y()) + share * share * (end.y() - second.y()));
	}
}
