// SPDX-License-Identifier: EPL-2.0
package wainscribe.cutting;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.TreeSet;

import wainscribe.cutting.solver.ProfileSolver;

/**
 * Says which piece is cut from which bar: at the least cost and, among the cheapest plans, with the longest single remainder.
 * <p>
 * If bars are too few or too short, as little length as possible is left out.
 */
public final class CuttingPlanner {

	/** A profile at work. */
	private record Work(ProfileJob job, Money money, ProfileSolver solver) {
	}

	/**
	 * Plans a job. The same job gives the same plan, whatever the order of its rows, unless it is stopped.
	 *
	 * @param job   pieces, stock and offcuts
	 * @param watch told of each better plan; may end the search
	 * @return the best plan found
	 */
	public CuttingPlan plan(CuttingJob job, PlanWatch watch) {
		Objects.requireNonNull(job, "job"); //$NON-NLS-1$
		Objects.requireNonNull(watch, "watch"); //$NON-NLS-1$
		List<Work> works = new ArrayList<>();
		TreeSet<String> profiles = new TreeSet<>();
		job.pieces().forEach(piece -> profiles.add(piece.profile()));
		for (String profile : profiles) {
			Money money = new Money(job.stock().stream().filter(row -> row.profile().equals(profile)).toList());
			ProfileJob part = new ProfileJob(profile, job, money);
			works.add(new Work(part, money, new ProfileSolver(part.task())));
		}
		CuttingPlan plan = plan(works);
		watch.improved(plan);
		return plan;
	}

	private static CuttingPlan plan(List<Work> works) {
		List<Bar> bars = new ArrayList<>();
		List<PieceDemand> unplaced = new ArrayList<>();
		BigDecimal cost = BigDecimal.ZERO.setScale(2);
		BigDecimal bound = BigDecimal.ZERO.setScale(2);
		for (Work work : works) {
			bars.addAll(work.job().bars(work.solver().best()));
			unplaced.addAll(work.job().unplaced(work.solver().best()));
			cost = cost.add(work.money().amount(work.solver().best().cost()));
			bound = bound.add(work.money().amount(work.solver().lowerBound()));
		}
		return new CuttingPlan(bars, cost, bound, bars.isEmpty() && unplaced.isEmpty(), unplaced);
	}
}
