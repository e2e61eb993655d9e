// SPDX-License-Identifier: EPL-2.0
package wainscribe.profile.section;

/** Finds the point of a segment that is nearest to another: even samples, then ever finer steps about the best of them. */
final class NearestShare {

	private static final int SAMPLES = 64;
	private static final double FINEST = 1e-9;

	private NearestShare() {
	}

	static double on(Segment segment, Spot to) {
		double best = 0;
		for (int i = 1; i <= SAMPLES; i++) {
			best = nearer(segment, to, best, (double) i / SAMPLES);
		}
		for (double step = 1.0 / SAMPLES; step > FINEST; step /= 2) {
			double centre = best;
			best = nearer(segment, to, best, Math.max(0, centre - step));
			best = nearer(segment, to, best, Math.min(1, centre + step));
		}
		return best;
	}

	private static double nearer(Segment segment, Spot to, double one, double other) {
		return segment.at(other).distanceTo(to) < segment.at(one).distanceTo(to) ? other : one;
	}
}
