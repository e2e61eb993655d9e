// SPDX-License-Identifier: EPL-2.0
package wainscribe.cutting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

/** The planner against plain enumeration of everything. */
class ExhaustiveComparisonTest {

	private static void compare(long seed, int mostPieces, boolean plenty) {
		CuttingJob job = new RandomJobs(seed).job(mostPieces, plenty);
		CuttingPlan plan = new CuttingPlanner().plan(job, PlanWatch.PATIENT);
		PlanCheck.check(job, plan);
		String what = "seed " + seed + ": " + job;
		ExhaustivePlan.Worth best = ExhaustivePlan.best(job);
		ExhaustivePlan.Worth found = ExhaustivePlan.of(plan);
		assertEquals(0, best.compareTo(found), () -> what + "\nbest " + best + "\nfound " + found + "\n" + plan);
		assertTrue(plan.optimal(), what);
	}

	@Test
	void smallJobsAreCutAtLeastCostWithTheLongestRemainder() {
		for (long seed = 0; seed < 3000; seed++) {
			compare(seed, 6, true);
		}
	}

	@Test
	void someLargerJobsToo() {
		for (long seed = 10_000; seed < 10_100; seed++) {
			compare(seed, 8, true);
		}
	}

	@Test
	void whereBarsAreTooFewLeastLengthIsLeftOut() {
		for (long seed = 20_000; seed < 21_500; seed++) {
			compare(seed, 6, false);
		}
	}
}
