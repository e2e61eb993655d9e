// SPDX-License-Identifier: EPL-2.0
package wainscribe.cutting.solver;

/**
 * What a dual solution says of the bars, in whole numbers and so without rounding: the bars of any packing are worth at least what
 * its items are worth, where no pattern of a bar type is worth more than the bar. A cut in the numbers of bars (Benders 1962,
 * Numer. Math. 4, 238-252).
 *
 * @param values value of each item, not below zero
 * @param worths largest value of a pattern of each bar type
 * @param need   value of all items wanted
 */
record DualCut(long[] values, long[] worths, long need) {

	/** The cut that says that the bars must hold the weight. */
	static DualCut material(CuttingTask task) {
		return new DualCut(task.weights(), task.bars().stream().mapToLong(BarType::capacity).toArray(), task.weight(task.demands()));
	}

	/** Returns by how much the worth of so many bars passes what is needed; below zero if they can't hold all items. */
	long slack(int[] numbers) {
		long slack = -need;
		for (int k = 0; k < numbers.length; k++) {
			slack = Math.addExact(slack, Math.multiplyExact(worths[k], numbers[k]));
		}
		return slack;
	}
}
