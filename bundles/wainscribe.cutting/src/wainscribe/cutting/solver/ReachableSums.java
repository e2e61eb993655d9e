// SPDX-License-Identifier: EPL-2.0
package wainscribe.cutting.solver;

import java.util.Arrays;

/** The sums of weights that pieces on one bar can have, within limits; every number if there are too many to list. */
final class ReachableSums {

	private static final int MOST = 20_000;

	private final long least;
	private final long most;
	private long[] listed;

	ReachableSums(CuttingTask task, long least, long most) {
		this.least = least;
		this.most = most;
		long[] sums = {0};
		for (int i = task.items() - 1; i >= 0 && sums.length <= MOST; i--) {
			for (int copy = 0; copy < task.demand(i) && sums.length <= MOST; copy++) {
				long[] more = with(sums, task.weight(i));
				if (more.length == sums.length) {
					break;
				}
				sums = more;
			}
		}
		if (sums.length <= MOST) {
			listed = Arrays.stream(sums).filter(sum -> sum > 0 && sum >= least).toArray();
		}
	}

	/** The sums with and without one more piece, rising. */
	private long[] with(long[] sums, long weight) {
		long[] merged = new long[2 * sums.length];
		int length = 0;
		int a = 0;
		int b = 0;
		while (a < sums.length || b < sums.length && sums[b] + weight <= most) {
			long plain = a < sums.length ? sums[a] : Long.MAX_VALUE;
			long longer = b < sums.length && sums[b] + weight <= most ? sums[b] + weight : Long.MAX_VALUE;
			merged[length++] = Math.min(plain, longer);
			a += plain <= longer ? 1 : 0;
			b += longer <= plain ? 1 : 0;
		}
		return Arrays.copyOf(merged, length);
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
