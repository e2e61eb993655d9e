// SPDX-License-Identifier: EPL-2.0
package wainscribe.cutting.solver;

import java.util.Arrays;
import java.util.TreeSet;

/** The sums of weights that pieces on one bar can have, within limits; every number if there are too many to list. */
final class ReachableSums {

	private static final int MOST = 20_000;

	private final long least;
	private final long most;
	private long[] listed;

	ReachableSums(CuttingTask task, long least, long most) {
		this.least = least;
		this.most = most;
		TreeSet<Long> sums = new TreeSet<>();
		sums.add(0L);
		boolean fits = true;
		for (int i = task.items() - 1; i >= 0 && fits; i--) {
			for (int copy = 0; copy < task.demand(i) && fits; copy++) {
				TreeSet<Long> more = new TreeSet<>();
				for (long sum : sums) {
					long next = sum + task.weight(i);
					if (next > most) {
						break;
					}
					more.add(next);
				}
				if (!sums.addAll(more)) {
					break;
				}
				fits = sums.size() <= MOST;
			}
		}
		if (fits) {
			listed = sums.stream().mapToLong(Long::longValue).filter(sum -> sum > 0 && sum >= least).toArray();
		}
	}

	/** Returns how many sums are not above a limit. */
	int countUpTo(long limit) {
		if (listed == null) {
			return (int) Math.max(0, Math.min(Integer.MAX_VALUE, Math.min(limit, most) - least + 1));
		}
		int at = Arrays.binarySearch(listed, limit);
		return at >= 0 ? at + 1 : -at - 1;
	}

	/** Returns a sum by its place. */
	long get(int index) {
		return listed == null ? least + index : listed[index];
	}
}
