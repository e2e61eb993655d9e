// SPDX-License-Identifier: EPL-2.0
package wainscribe.takeoff;

import java.util.Objects;

import wainscribe.takeoff.cutting.HomeCuttingJob;
import wainscribe.takeoff.cutting.HomePlan;

/**
 * A cutting job and its plan: what mouldings are bought.
 *
 * @param job  what is cut from what
 * @param plan the plan of that job
 */
public record CutStock(HomeCuttingJob job, HomePlan plan) {

	/** Refuses nulls. */
	public CutStock {
		Objects.requireNonNull(job);
		Objects.requireNonNull(plan);
	}
}
