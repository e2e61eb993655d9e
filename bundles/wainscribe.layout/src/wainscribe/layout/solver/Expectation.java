// SPDX-License-Identifier: EPL-2.0
package wainscribe.layout.solver;

import java.util.List;

/**
 * What one would expect of a run if nothing stood in its way: the number of frames that keeps proportion, is in or nearest to
 * the module of the room and uses few frames. Compared with what a layout does it tells why.
 */
public final class Expectation {

	private final RoomTask task;
	private final WallTask wall;
	private final Layout layout;
	private final RunFit fit;

	/**
	 * Creates the expectation of a tier.
	 *
	 * @param task   the problem
	 * @param wall   the wall
	 * @param band   the tier; null to ask about bays only
	 * @param layout the layout to explain
	 */
	public Expectation(RoomTask task, WallTask wall, Band band, Layout layout) {
		this.task = task;
		this.wall = wall;
		this.layout = layout;
		fit = band == null ? null : task.fit(wall, band, layout.gap(), layout.rows());
	}

	private FrameFit fit(Line bottom, Line top) {
		return new FrameFit(task.limits(), wall.islands(), bottom, top, layout.gap(), layout.gapY());
	}

	/** Returns the number of frames, or of fields, expected in a run, 0 if it is too short for one. */
	public int frames(long x0, long x1) {
		int best = 0;
		for (int n = fit.fewest(x0, x1); n <= fit.most(x0, x1); n += fit.step()) {
			if (best == 0 || isBetter(x0, x1, n, best)) {
				best = n;
			}
		}
		return best;
	}

	private boolean isBetter(long x0, long x1, int n, int best) {
		boolean out = fit.isOutOfBand(x0, x1, n);
		boolean bestOut = fit.isOutOfBand(x0, x1, best);
		if (out != bestOut) {
			return bestOut;
		}
		return distance(x0, x1, n) < distance(x0, x1, best);
	}

	private long distance(long x0, long x1, int n) {
		return Module.distance(fit.moduleWidth(x0, x1, n), layout.window());
	}

	/** Returns the islands that bar a number of frames in a run. */
	public List<Island> barring(long x0, long x1, int n) {
		return fit.barring(x0, x1, n);
	}

	/** Returns the islands that a number of frames would come near to in a run. */
	public List<Island> near(long x0, long x1, int n) {
		return fit.nearTo(x0, x1, n);
	}

	/** Tells whether a number of frames would need pieces longer than can be had. */
	public boolean isTooLong(long x0, long x1, int n) {
		return fit.isTooLong(x0, x1, n);
	}

	/** Returns the shortest run that takes anything between two ends. */
	public long shortest(long x0, long x1) {
		return fit.shortest(x0, x1);
	}

	/** Returns the widest field that strips leave in a run, 0 if it is too short for any. */
	public long widest(long x0, long x1) {
		return fit.most(x0, x1) == 0 ? 0 : Module.units(fit.moduleWidth(x0, x1, fit.fewest(x0, x1)));
	}

	/** Returns the islands that bar a bay. */
	public List<Island> barring(Bay bay) {
		Quad frame = bay.frame();
		return fit(bay.bottom(), bay.top()).barring(frame.x() - layout.gap(), frame.x() + frame.width() + layout.gap(), 1);
	}
}
