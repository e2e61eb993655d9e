// SPDX-License-Identifier: EPL-2.0
package wainscribe.layout.solver;

import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/** Which islands bar which numbers of frames in a stretch, over all gaps. */
public final class BarredCounts {

	private final Map<Integer, TreeSet<Integer>> byIsland = new LinkedHashMap<>();
	private final TreeSet<Integer> counts = new TreeSet<>();
	private boolean stockTooShort;

	/**
	 * Tries every number of frames, or of fields, at every gap and number of rows.
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
			task.rows().forEach(rows -> count(task.fit(wall, band, gap, rows), x0, x1));
		}
	}

	private void count(RunFit fit, long x0, long x1) {
		for (int n = fit.fewest(x0, x1); n <= fit.most(x0, x1); n += fit.step()) {
			int count = n;
			counts.add(n);
			fit.barring(x0, x1, n)
					.forEach(island -> byIsland.computeIfAbsent(island.element(), key -> new TreeSet<>()).add(count));
			stockTooShort |= fit.isTooLong(x0, x1, n);
		}
	}

	/**
	 * Returns few islands that together bar as many numbers of frames as all do, the one that bars most first.
	 *
	 * @return numbers of frames that an island bars at one gap or more, by the number of the island
	 */
	public Map<Integer, TreeSet<Integer>> byIsland() {
		Map<Integer, TreeSet<Integer>> few = new LinkedHashMap<>();
		Set<Integer> left = new TreeSet<>();
		byIsland.values().forEach(left::addAll);
		while (!left.isEmpty()) {
			int next = byIsland.entrySet().stream()
					.max(Comparator.comparingLong(entry -> entry.getValue().stream().filter(left::contains).count())).orElseThrow()
					.getKey();
			few.put(next, byIsland.get(next));
			left.removeAll(byIsland.get(next));
		}
		return few;
	}

	/** Tells whether some numbers are all that the length of the stretch allows. */
	public boolean isEvery(Set<Integer> some) {
		return some.equals(counts);
	}

	/** Tells whether some number of frames would need pieces longer than can be had. */
	public boolean isStockTooShort() {
		return stockTooShort;
	}
}
