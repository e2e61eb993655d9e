// SPDX-License-Identifier: EPL-2.0
package wainscribe.cutting.solver;

import java.util.Arrays;

/** States of the knapsack, each with the state it came from; a list that grows. */
final class KnapsackStates {

	private long[] weights = new long[1024];
	private long[] values = new long[1024];
	private int[] parents = new int[1024];
	private int[] items = new int[1024];
	private int size;

	void clear() {
		size = 0;
	}

	int add(long weight, long value, int parent, int item) {
		if (size == weights.length) {
			int more = 2 * size;
			weights = Arrays.copyOf(weights, more);
			values = Arrays.copyOf(values, more);
			parents = Arrays.copyOf(parents, more);
			items = Arrays.copyOf(items, more);
		}
		weights[size] = weight;
		values[size] = value;
		parents[size] = parent;
		items[size] = item;
		return size++;
	}

	int size() {
		return size;
	}

	long weight(int state) {
		return weights[state];
	}

	long value(int state) {
		return values[state];
	}

	/** Returns how many of each item led to a state. */
	int[] counts(int state, int itemTypes) {
		int[] counts = new int[itemTypes];
		for (int s = state; parents[s] >= 0; s = parents[s]) {
			counts[items[s]]++;
		}
		return counts;
	}
}
