// SPDX-License-Identifier: EPL-2.0
package wainscribe.benchmarks.general;

import java.util.ArrayList;
import java.util.List;

import wainscribe.layout.solver.Box;
import wainscribe.layout.solver.Island;
import wainscribe.layout.solver.Limits;

/** Which frames are legal in a level tier at one gap, and how near they come to islands. */
final class FrameLegality {

	private static final long TALL = 800L * 8000;

	private final Limits limits;
	private final List<Island> islands;
	private final long low;
	private final long high;
	private final long gap;

	FrameLegality(Limits limits, List<Island> islands, long bottom, long top, long gap, long gapY) {
		this.limits = limits;
		this.islands = islands;
		this.gap = gap;
		low = bottom + gapY;
		high = top - gapY;
	}

	private boolean isFrameable(long[] run) {
		return run[1] - run[0] >= limits.least() + 2 * gap;
	}

	/** Returns the numbers of frames worth choosing from: the legal ones, or none where there is no legal one. */
	List<Filling> fillings(long[] run) {
		List<Filling> fillings = new ArrayList<>();
		boolean pier = run[1] - run[0] < 2 * limits.least() + 3 * gap;
		for (int n = 1; isFrameable(run) && total(run, n) >= limits.least() * n; n++) {
			int near = near(run, n);
			if (near >= 0) {
				fillings.add(new Filling(n, new int[] { 0, 0, 0, near, isOutOfBand(total(run, n), n) ? 1 : 0 }, total(run, n), !pier));
			}
		}
		if (fillings.isEmpty()) {
			fillings.add(new Filling(0, new int[] { isFrameable(run) ? 1 : 0, 0, 0, 0, 0 }, 0, false));
		}
		return fillings;
	}

	private long total(long[] run, int n) {
		return run[1] - run[0] - gap * (n + 1);
	}

	private boolean isOutOfBand(long total, int n) {
		if (limits.hasWidthWish()) {
			return limits.widthLeast() >= 0 && total < limits.widthLeast() * n
					|| limits.widthMost() >= 0 && total > limits.widthMost() * n;
		}
		long height = high - low;
		return height <= TALL ? 2 * total < height * n || total > 2 * height * n : 3 * total < height * n || total > height * n;
	}

	private int near(long[] run, int n) {
		long total = total(run, n);
		long x = run[0] + gap;
		int near = 0;
		for (int i = 0; i < n; i++) {
			long width = total / n + (i < total % n ? 1 : 0);
			int one = near(x, x + width);
			if (one < 0) {
				return -1;
			}
			near += one;
			x += width + gap;
		}
		return near;
	}

	/** Returns the near distances of a frame as high as the tier, or -1 if it may not be. */
	int near(long x0, long x1) {
		return near(new Box(x0, low, x1, high));
	}

	/** Returns the near distances of a frame, or -1 if it may not be. */
	int near(Box frame) {
		long width = frame.x1() - frame.x0();
		long height = frame.y1() - frame.y0();
		if (Math.min(width, height) < limits.least() || Math.max(width, height) > limits.longest()) {
			return -1;
		}
		int near = 0;
		for (Island island : islands) {
			if (comesNear(frame, island.outline(), island.margin())) {
				return -1;
			}
			if (island.warning() > island.margin() && comesNear(frame, island.outline(), island.warning())) {
				near++;
			}
		}
		return near;
	}

	/** Touching is too near where no distance is asked for. */
	private boolean comesNear(Box frame, Box island, long distance) {
		Box grown = island.grown(distance);
		boolean inField = grown.x0() >= frame.x0() + limits.face() && grown.x1() <= frame.x1() - limits.face()
				&& grown.y0() >= frame.y0() + limits.face() && grown.y1() <= frame.y1() - limits.face();
		return !inField && frame.overlaps(distance == 0 ? island.grown(1) : grown);
	}
}
