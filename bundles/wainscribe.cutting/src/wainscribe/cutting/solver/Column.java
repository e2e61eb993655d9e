// SPDX-License-Identifier: EPL-2.0
package wainscribe.cutting.solver;

import java.util.Arrays;

/**
 * A pattern as a column of the master problem, only the items that occur.
 *
 * @param bar    index of the bar type
 * @param items  the item types on it, rising
 * @param counts how many of each
 * @param weight the sum of their weights
 */
record Column(int bar, int[] items, int[] counts, long weight) {

	static Column of(CuttingTask task, Pattern pattern) {
		int[] counts = pattern.counts();
		int size = 0;
		for (int count : counts) {
			size += count > 0 ? 1 : 0;
		}
		int[] items = new int[size];
		int[] numbers = new int[size];
		int at = 0;
		for (int i = 0; i < counts.length; i++) {
			if (counts[i] > 0) {
				items[at] = i;
				numbers[at++] = counts[i];
			}
		}
		return new Column(pattern.bar(), items, numbers, task.weight(counts));
	}

	Pattern pattern(int itemTypes) {
		int[] all = new int[itemTypes];
		for (int j = 0; j < items.length; j++) {
			all[items[j]] = counts[j];
		}
		return new Pattern(bar, all);
	}

	/** Returns the same pattern on another bar. */
	Column on(int other) {
		return other == bar ? this : new Column(other, items, counts, weight);
	}

	long value(long[] values) {
		long sum = 0;
		for (int j = 0; j < items.length; j++) {
			sum += counts[j] * values[items[j]];
		}
		return sum;
	}

	@Override
	public boolean equals(Object other) {
		return other instanceof Column column && bar == column.bar && Arrays.equals(items, column.items)
			&& Arrays.equals(counts, column.counts);
	}

	@Override
	public int hashCode() {
		return 31 * (31 * bar + Arrays.hashCode(items)) + Arrays.hashCode(counts);
	}
}
