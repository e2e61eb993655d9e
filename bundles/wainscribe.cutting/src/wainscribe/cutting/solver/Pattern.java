// SPDX-License-Identifier: EPL-2.0
package wainscribe.cutting.solver;

import java.util.Arrays;

/**
 * A cutting pattern: how many of each item type are cut from one bar of a type.
 *
 * @param bar    index of the bar type
 * @param counts number of each item type; not to be changed
 */
public record Pattern(int bar, int[] counts) {

	/** Returns whether nothing is cut. */
	public boolean isEmpty() {
		for (int count : counts) {
			if (count > 0) {
				return false;
			}
		}
		return true;
	}

	/** Returns this pattern with no more of each item than the given demand. */
	public Pattern trimmedTo(int[] demand) {
		int[] trimmed = counts;
		for (int i = 0; i < counts.length; i++) {
			if (counts[i] > demand[i]) {
				trimmed = trimmed == counts ? counts.clone() : trimmed;
				trimmed[i] = demand[i];
			}
		}
		return trimmed == counts ? this : new Pattern(bar, trimmed);
	}

	/** Returns how often this pattern can be cut before more than the demand is cut or the bars run out. */
	public int timesWithin(int[] demand, int bars) {
		int times = bars;
		for (int i = 0; i < counts.length; i++) {
			if (counts[i] > 0) {
				times = Math.min(times, demand[i] / counts[i]);
			}
		}
		return times;
	}

	@Override
	public boolean equals(Object other) {
		return other instanceof Pattern pattern && bar == pattern.bar && Arrays.equals(counts, pattern.counts);
	}

	@Override
	public int hashCode() {
		return 31 * bar + Arrays.hashCode(counts);
	}
}
