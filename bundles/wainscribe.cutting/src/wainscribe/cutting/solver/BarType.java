// SPDX-License-Identifier: EPL-2.0
package wainscribe.cutting.solver;

/**
 * Bars that are alike.
 *
 * @param capacity what a bar holds, in the unit of the {@link CuttingTask}: the sum of the weights on it may not be above this
 * @param cost     cost of one bar, a whole number, not below zero
 * @param limit    how many there are; {@link CuttingTask#isUnlimited} tells whether that is as good as any number
 */
public record BarType(long capacity, long cost, int limit) {

	/** Returns the same bars in another number. */
	public BarType withLimit(int other) {
		return new BarType(capacity, cost, other);
	}
}
