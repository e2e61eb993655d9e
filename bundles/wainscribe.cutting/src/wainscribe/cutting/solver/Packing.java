// SPDX-License-Identifier: EPL-2.0
package wainscribe.cutting.solver;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Patterns and how often each is cut, and what of the demand is still open. */
public final class Packing {

	/**
	 * A pattern and how often it is cut.
	 *
	 * @param pattern the pattern
	 * @param times   at least 1
	 */
	public record Use(Pattern pattern, int times) {
	}

	private final CuttingTask task;
	private final Map<Pattern, Integer> uses;
	private final int[] open;
	private final int[] left;

	/** Starts with nothing cut. */
	public Packing(CuttingTask task) {
		this.task = task;
		uses = new LinkedHashMap<>();
		open = task.demands();
		left = task.limits();
	}

	/** Starts with a copy. */
	public Packing(Packing other) {
		task = other.task;
		uses = new LinkedHashMap<>(other.uses);
		open = other.open.clone();
		left = other.left.clone();
	}

	/**
	 * Cuts a pattern. What is more than the demand is left out; nothing happens if nothing stays.
	 *
	 * @param pattern the pattern
	 * @param times   how often
	 */
	public void cut(Pattern pattern, int times) {
		Pattern wanted = pattern.trimmedTo(open);
		if (times <= 0 || wanted.isEmpty()) {
			return;
		}
		int whole = Math.min(times, wanted.timesWithin(open, left[pattern.bar()]));
		if (whole <= 0) {
			return;
		}
		for (int i = 0; i < open.length; i++) {
			open[i] -= whole * wanted.counts()[i];
		}
		left[pattern.bar()] -= whole;
		uses.merge(wanted, whole, Integer::sum);
		cut(pattern, times - whole);
	}

	/** Returns the patterns and how often each is cut. */
	public List<Use> uses() {
		List<Use> result = new ArrayList<>();
		uses.forEach((pattern, times) -> result.add(new Use(pattern, times)));
		return result;
	}

	/** Returns what of each item type is still to be cut; not to be changed. */
	public int[] open() {
		return open;
	}

	/** Returns how many bars of each type are left; not to be changed. */
	public int[] left() {
		return left;
	}

	/** Returns whether nothing is open. */
	public boolean isComplete() {
		for (int count : open) {
			if (count > 0) {
				return false;
			}
		}
		return true;
	}

	/** Returns the sum of the lengths still open. */
	public long openLength() {
		long sum = 0;
		for (int i = 0; i < open.length; i++) {
			sum += open[i] * (task.weight(i) - task.kerf());
		}
		return sum;
	}

	/** Returns the cost of the bars used. */
	public long cost() {
		long sum = 0;
		for (Map.Entry<Pattern, Integer> use : uses.entrySet()) {
			sum += task.bars().get(use.getKey().bar()).cost() * use.getValue();
		}
		return sum;
	}

	/** Returns the longest room left on a bar that is used, in the unit of the task, the last kerf not taken off. */
	public long longestRest() {
		long longest = 0;
		for (Pattern pattern : uses.keySet()) {
			longest = Math.max(longest, task.bars().get(pattern.bar()).capacity() - task.weight(pattern.counts()));
		}
		return longest;
	}

	CuttingTask task() {
		return task;
	}
}
