// SPDX-License-Identifier: EPL-2.0
package wainscribe.cutting;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.TreeSet;

import wainscribe.cutting.solver.ProfileSolver;

/** One job being planned: the profiles at work and the plan that they make together. */
final class Planning {

	/** A profile at work. */
	private record Work(ProfileJob job, Money money, ProfileSolver solver) {
	}

	private final CuttingJob job;
	private final PlanWatch watch;
	private final List<Work> works = new ArrayList<>();
	private boolean started;

	Planning(CuttingJob job, PlanWatch watch) {
		this.job = job;
		this.watch = watch;
	}

	CuttingPlan run() {
		TreeSet<String> profiles = new TreeSet<>();
		job.pieces().forEach(piece -> profiles.add(piece.profile()));
		for (String profile : profiles) {
			Money money = new Money(job.stock().stream().filter(row -> row.profile().equals(profile)).toList());
			ProfileJob part = new ProfileJob(profile, job, money);
			works.add(new Work(part, money, new ProfileSolver(part.task(), watch::stopped, this::improved)));
		}
		started = true;
		improved();
		works.forEach(work -> work.solver().improveQuickly());
		for (Work work : works) {
			work.solver().improveCost();
			improved();
		}
		improveRests();
		CuttingPlan plan = plan();
		watch.improved(plan);
		return plan;
	}

	private void improved() {
		if (started) {
			watch.improved(plan());
		}
	}

	private void improveRests() {
		List<Work> order = works.stream().sorted(Comparator.comparingLong((Work work) -> -work.solver().best().longestRest())).toList();
		for (Work work : order) {
			long longest = works.stream().mapToLong(each -> each.solver().best().longestRest()).max().orElse(0);
			work.solver().improveRest(Math.max(longest, job.kerf().units()));
		}
	}

	private CuttingPlan plan() {
		List<Bar> bars = new ArrayList<>();
		List<PieceDemand> unplaced = new ArrayList<>();
		BigDecimal cost = BigDecimal.ZERO.setScale(2);
		BigDecimal bound = BigDecimal.ZERO.setScale(2);
		boolean optimal = true;
		for (Work work : works) {
			ProfileSolver solver = work.solver();
			bars.addAll(work.job().bars(solver.best()));
			unplaced.addAll(work.job().unplaced(solver.best()));
			cost = cost.add(work.money().amount(solver.best().cost()));
			bound = bound.add(work.money().amount(solver.lowerBound()));
			optimal &= solver.isCostProved() && solver.isRestProved();
		}
		return new CuttingPlan(bars, cost, bound, optimal, unplaced);
	}
}
