// SPDX-License-Identifier: EPL-2.0
package wainscribe.cutting;

import java.util.Objects;

/**
 * Says which piece is cut from which bar: at the least cost and, among the cheapest plans, with the longest single remainder.
 * <p>
 * Profiles do not depend on each other, but the longest remainder is looked for over all of them. If bars are too few or too
 * short, as little length as possible is left out.
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
