// SPDX-License-Identifier: EPL-2.0
package wainscribe.cutting.solver;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * The pricing problem: the most valuable pattern for each bar type, exactly, in whole numbers.
 * <p>
 * A bounded knapsack for all capacities at once: lists of states that no other state beats in both weight and value (Nemhauser and
 * Ullmann 1969, Manage. Sci. 15(9), 494-505), items by falling value for their weight. A state is dropped as soon as it can't lead
 * above what is asked for with any bar type, even if its room were filled at the rate of the item at hand (Dantzig 1957).
 */
final class PricingKnapsack {

	private static final double SAFETY = 1 + 1e-9;
	private static final double AMBITION = 0.6;

	private final long[] weights;
	private final KnapsackStates states = new KnapsackStates();
	private long[] capacities;
	private long[] above;
	private long[] hope;
	private int[] best;
	private boolean collect;
	private int[] front = new int[256];
	private int frontSize;
	private int[] merged = new int[256];
	private int[] fresh = new int[256];
	private final List<Integer> found = new ArrayList<>();

	PricingKnapsack(long[] weights) {
		this.weights = weights;
	}

	/**
	 * Finds patterns.
	 *
	 * @param values     value of each item, not below zero
	 * @param most       most of each item on one bar
	 * @param capacities capacity of each bar type
	 * @param above      value that has to be passed for each bar type
	 * @param collect    whether to remember further patterns that pass it
	 */
	void solve(long[] values, int[] most, long[] capacities, long[] above, boolean collect) {
		this.capacities = capacities;
		this.above = above.clone();
		this.collect = collect;
		best = new int[capacities.length];
		Arrays.fill(best, -1);
		found.clear();
		states.clear();
		front[0] = states.add(0, 0, -1, -1);
		frontSize = 1;
		long largest = Arrays.stream(capacities).max().orElse(0);
		int[] order = IntStream.range(0, weights.length).filter(i -> values[i] > 0 && most[i] > 0 && weights[i] <= largest).boxed()
			.sorted(Comparator.comparingDouble((Integer i) -> -(double) values[i] / weights[i]).thenComparing(i -> i))
			.mapToInt(Integer::intValue).toArray();
		hope = this.above.clone();
		if (collect) {
			aimHigh(order, values, most);
		}
		for (int item : order) {
			addItem(item, values[item], most[item], largest);
		}
	}

	/** Patterns much worse than one that simply takes the items in order are not worth the search. */
	private void aimHigh(int[] order, long[] values, int[] most) {
		for (int k = 0; k < capacities.length; k++) {
			long room = capacities[k];
			long value = 0;
			for (int item : order) {
				long number = Math.min(most[item], room / weights[item]);
				room -= number * weights[item];
				value += number * values[item];
			}
			aim(k, value);
		}
	}

	private void aim(int bar, long value) {
		if (value > above[bar]) {
			hope[bar] = Math.max(hope[bar], above[bar] + (long) (AMBITION * (value - 1 - above[bar])));
		}
	}

	private void addItem(int item, long value, int most, long largest) {
		double rate = (double) value / weights[item];
		dropHopeless(rate);
		int[] from = front;
		int fromSize = frontSize;
		for (int copy = 0; copy < most && fromSize > 0; copy++) {
			int freshSize = 0;
			if (fresh.length < fromSize) {
				fresh = new int[2 * fromSize];
			}
			int[] next = from == fresh ? new int[fromSize] : fresh;
			for (int s = 0; s < fromSize; s++) {
				long weight = states.weight(from[s]) + weights[item];
				if (weight > largest) {
					break;
				}
				long worth = states.value(from[s]) + value;
				if (isHopeful(weight, worth, rate)) {
					next[freshSize++] = states.add(weight, worth, from[s], item);
				}
			}
			from = next;
			fromSize = merge(next, freshSize);
			if (copy + 1 < most) {
				fresh = new int[Math.max(256, fromSize)];
			}
		}
	}

	private void dropHopeless(double rate) {
		int kept = 0;
		for (int s = 0; s < frontSize; s++) {
			if (isHopeful(states.weight(front[s]), states.value(front[s]), rate)) {
				front[kept++] = front[s];
			}
		}
		frontSize = kept;
	}

	private boolean isHopeful(long weight, long value, double rate) {
		for (int k = 0; k < capacities.length; k++) {
			if (weight <= capacities[k] && value + (capacities[k] - weight) * rate * SAFETY > hope[k]) {
				return true;
			}
		}
		return false;
	}

	/** Merges new states, by rising weight, into the front; returns how many of them stay, moved to the beginning. */
	private int merge(int[] next, int size) {
		if (merged.length < frontSize + size) {
			merged = new int[2 * (frontSize + size)];
		}
		int stay = 0;
		int length = 0;
		int a = 0;
		int b = 0;
		long top = -1;
		while (a < frontSize || b < size) {
			boolean fresher = a == frontSize || b < size && isBefore(next[b], front[a]);
			int state = fresher ? next[b++] : front[a++];
			if (states.value(state) > top) {
				top = states.value(state);
				merged[length++] = state;
				if (fresher) {
					next[stay++] = state;
					record(state);
				}
			}
		}
		int[] old = front;
		front = merged;
		merged = old;
		frontSize = length;
		return stay;
	}

	private boolean isBefore(int a, int b) {
		int order = Long.compare(states.weight(a), states.weight(b));
		return order < 0 || order == 0 && states.value(a) > states.value(b);
	}

	private void record(int state) {
		boolean passed = false;
		for (int k = 0; k < capacities.length; k++) {
			if (states.weight(state) <= capacities[k] && states.value(state) > above[k]) {
				passed = true;
				if (best[k] < 0 || states.value(state) > states.value(best[k])) {
					best[k] = state;
				}
				if (collect) {
					aim(k, states.value(state));
				} else {
					above[k] = states.value(state);
					hope[k] = above[k];
				}
			}
		}
		if (passed && collect) {
			found.add(state);
		}
	}

	/** Returns the value of the best pattern of a bar type, or what was to be passed if none passes it. */
	long value(int bar) {
		return best[bar] < 0 ? above[bar] : Math.max(above[bar], states.value(best[bar]));
	}

	/**
	 * Returns patterns that pass what was asked for: of each bar type the best and a few that share no item with it or each other,
	 * so that the master problem gets something for all its rows.
	 *
	 * @param most most patterns of one bar type
	 */
	List<Pattern> patterns(int most) {
		List<Pattern> patterns = new ArrayList<>();
		found.sort(Comparator.comparingLong((Integer s) -> -states.value(s)).thenComparing(s -> s));
		for (int k = 0; k < capacities.length; k++) {
			if (best[k] >= 0) {
				int[] first = states.counts(best[k], weights.length);
				patterns.add(new Pattern(k, first));
				addApart(patterns, k, first.clone(), most);
			}
		}
		return patterns;
	}

	private void addApart(List<Pattern> patterns, int bar, int[] used, int most) {
		int added = 1;
		int tried = 0;
		for (int state : found) {
			if (added == most || ++tried > 400) {
				return;
			}
			if (states.weight(state) <= capacities[bar] && states.value(state) > above[bar]) {
				int[] counts = states.counts(state, weights.length);
				if (IntStream.range(0, counts.length).noneMatch(i -> counts[i] > 0 && used[i] > 0)) {
					patterns.add(new Pattern(bar, counts));
					IntStream.range(0, counts.length).forEach(i -> used[i] += counts[i]);
					added++;
				}
			}
		}
	}
}
