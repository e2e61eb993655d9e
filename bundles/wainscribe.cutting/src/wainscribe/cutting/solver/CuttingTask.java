// SPDX-License-Identifier: EPL-2.0
package wainscribe.cutting.solver;

import java.util.List;

/**
 * The cutting stock problem with several stock lengths, in whole numbers (Gilmore and Gomory 1961, Oper. Res. 9(6),
 * 849-859): item types with demands, bar types with costs and limits. The weight of an item is its length plus one kerf and
 * the capacity of a bar its usable length plus one kerf, so that the last piece needs no cut.
 */
public final class CuttingTask {

	private final long[] weights;
	private final int[] demands;
	private final List<BarType> bars;
	private final long kerf;
	private final int pieces;

	/**
	 * States a problem.
	 *
	 * @param weights weight of each item type, above zero, falling
	 * @param demands number wanted of each, at least 1
	 * @param bars    the bar types
	 * @param kerf    the part of each weight that is kerf
	 */
	public CuttingTask(long[] weights, int[] demands, List<BarType> bars, long kerf) {
		this.weights = weights.clone();
		this.demands = demands.clone();
		this.bars = List.copyOf(bars);
		this.kerf = kerf;
		int sum = 0;
		for (int demand : demands) {
			sum = Math.addExact(sum, demand);
		}
		pieces = sum;
	}

	/** Returns the number of item types. */
	public int items() {
		return weights.length;
	}

	/** Returns the weight of an item type. */
	public long weight(int item) {
		return weights[item];
	}

	/** Returns the weights of all item types; not to be changed. */
	long[] weights() {
		return weights;
	}

	/** Returns how many of an item type are wanted. */
	public int demand(int item) {
		return demands[item];
	}

	/** Returns the part of each weight that is kerf. */
	public long kerf() {
		return kerf;
	}

	/** Returns a copy of all demands. */
	public int[] demands() {
		return demands.clone();
	}

	/** Returns the bar types. */
	public List<BarType> bars() {
		return bars;
	}

	/** Returns how many bars there are of each type, as a new array. */
	public int[] limits() {
		return bars.stream().mapToInt(BarType::limit).toArray();
	}

	/** Returns the number of pieces wanted. */
	public int pieces() {
		return pieces;
	}

	/** Returns whether there are so many bars of a type that its limit never matters. */
	public boolean isUnlimited(int bar) {
		return bars.get(bar).limit() >= pieces;
	}

	/** Returns the sum of the weights of the given numbers of items. */
	public long weight(int[] counts) {
		long sum = 0;
		for (int i = 0; i < counts.length; i++) {
			sum += counts[i] * weights[i];
		}
		return sum;
	}

	/** Returns the same items to be cut from other bars. */
	public CuttingTask withBars(List<BarType> others) {
		return new CuttingTask(weights, demands, others, kerf);
	}
}
