// SPDX-License-Identifier: EPL-2.0
package wainscribe.layout.solver;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;

/** Which islands bar which numbers of frames in a stretch, over all gaps. */
public final class BarredCounts {

	private final Map<Integer, TreeSet<Integer>> byIsland = new LinkedHashMap<>();
	private boolean stockTooShort;

	/**
	 * Tries every number of frames at every gap.
	 *
	 * @param task the problem
	 * @param wall the wall
	 * @param band the tier
	 * @param gaps the gaps to look at
	 * @param x0   left end of the stretch
	 * @param x1   right end of the stretch
	 */
	public BarredCounts(RoomTask task, WallTask wall, Band band, List<Long> gaps, long x0, long x1) {
		for (long gap : gaps) {
			FrameFit fit = new FrameFit(task.limits(), wall.islands(), band.bottom(), band.top(), gap, task.vertical(gap));
			for (int n = 1; n <= fit.most(x1 - x0); n++) {
				int count = n;
				fit.barring(x0, x1, n)
						.forEach(island -> byIsland.computeIfAbsent(island.element(), key -> new TreeSet<>()).add(count));
				stockTooShort |= x1 - x0 - gap * (n + 1) > task.limits().longest() * n;
			}
		}
	}

	/** Returns for each island, by its number, the numbers of frames it bars at one gap or more. */
	public Map<Integer, TreeSet<Integer>> byIsland() {
		return byIsland;
	}

	/** Tells whether some number of frames would need pieces longer than can be had. */
	public boolean isStockTooShort() {
		return stockTooShort;
	}
}
