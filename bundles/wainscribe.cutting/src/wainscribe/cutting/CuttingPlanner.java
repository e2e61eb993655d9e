// SPDX-License-Identifier: EPL-2.0
package wainscribe.cutting;

import java.util.Objects;

/**
 * Says which piece is cut from which bar: at the least cost and, among the cheapest plans, with the longest single remainder.
 * <p>
 * Profiles do not depend on each other, but the longest remainder is looked for over all of them. If bars are too few or too
 * short, as little length as possible is left out; of equal lengths, what makes the rest of the plan better in this order.
 * <p>
 * Method: simple fillings give a plan at once (first fit decreasing, minimum bin slack). The linear relaxation of Gilmore and Gomory
 * (1961, Oper. Res. 9(6), 849-859), solved by column generation, gives a lower bound and better plans by diving (Belov and
 * Scheithauer 2006, Eur. J. Oper. Res. 171(1), 85-106). Then the numbers of bars of each kind are gone through by rising cost, each
 * refuted by a dual solution (a cut after Benders 1962, Numer. Math. 4, 238-252), by a search over all patterns, or filled. For the
 * longest remainder one bar is made shorter and the same question asked. Duals are rounded to whole numbers and the most valuable
 * pattern is found exactly, so no proof rests on floating point (the bound of Farley 1990, Oper. Res. 38(5), 922-923).
 * <p>
 * The work is limited by counting steps, not by time. If a proof is not reached within them, {@link CuttingPlan#optimal()} is false and
 * {@link CuttingPlan#isCostProved()} says what of it is proved.
 */
public final class CuttingPlanner {

	/**
	 * Plans a job. The same job gives the same plan, whatever the order of its rows, unless it is stopped.
	 *
	 * @param job   pieces, stock and offcuts
	 * @param watch told of each better plan, the first at once; may end the search
	 * @return the best plan found
	 */
	public CuttingPlan plan(CuttingJob job, PlanWatch watch) {
		Objects.requireNonNull(job, "job"); //$NON-NLS-1$
		Objects.requireNonNull(watch, "watch"); //$NON-NLS-1$
		return new Planning(job, watch).run();
	}
}
