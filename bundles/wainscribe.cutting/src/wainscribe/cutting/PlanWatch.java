// SPDX-License-Identifier: EPL-2.0
package wainscribe.cutting;

/** Follows the planner at work and may end it. Called on the planner's thread. */
public interface PlanWatch {

	/** A watch that waits for the end. */
	PlanWatch PATIENT = new PlanWatch() {
		@Override
		public boolean stopped() {
			return false;
		}

		@Override
		public void improved(CuttingPlan best) {
			// waits for the result
		}
	};

	/**
	 * Tells whether to end now with the best plan so far. Asked often, so it should answer at once.
	 *
	 * @return true to end
	 */
	boolean stopped();

	/**
	 * Hands over a plan that is better, or known to be better than before. Each is at least as good as the one before.
	 *
	 * @param best the best plan so far
	 */
	void improved(CuttingPlan best);
}
