// SPDX-License-Identifier: EPL-2.0
package wainscribe.cutting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;

import wainscribe.model.length.Length;

/** What holds for every plan. */
class PlanLawsTest {

	private static CuttingPlan plan(CuttingJob job) {
		CuttingPlan plan = new CuttingPlanner().plan(job, PlanWatch.PATIENT);
		PlanCheck.check(job, plan);
		return plan;
	}

	private static <T> List<T> shuffled(List<T> rows, long seed) {
		List<T> copy = new ArrayList<>(rows);
		Collections.shuffle(copy, new Random(seed));
		return copy;
	}

	@Property(tries = 150)
	void orderOfRowsChangesNothing(@ForAll @IntRange(min = 0, max = 100_000) int seed) {
		CuttingJob job = new RandomJobs(seed).job(16, seed % 3 > 0);
		CuttingJob other = new CuttingJob(shuffled(job.pieces(), seed), shuffled(job.stock(), seed), shuffled(job.offcuts(), seed),
			job.kerf(), job.endTrim(), job.shortestOffcut());
		assertEquals(plan(job), plan(other));
	}

	@Property(tries = 150)
	void costIsNotAboveFirstFitDecreasing(@ForAll @IntRange(min = 0, max = 100_000) int seed) {
		CuttingJob job = new RandomJobs(seed).job(24, true);
		CuttingPlan plan = plan(job);
		assertTrue(plan.unplaced().isEmpty());
		StockLength enough = job.stock().stream().filter(row -> row.available().isEmpty()).max((a, b) -> a.length().compareTo(b.length()))
			.orElseThrow();
		BigDecimal simple = enough.price().multiply(BigDecimal.valueOf(firstFit(job, enough)));
		assertTrue(plan.cost().compareTo(simple) <= 0, plan.cost() + " above " + simple);
	}

	/** Number of bars that first fit decreasing takes. */
	private static int firstFit(CuttingJob job, StockLength stock) {
		List<Length> pieces = job.pieces().stream().flatMap(piece -> Stream.generate(piece::length).limit(piece.quantity()))
			.sorted(Collections.reverseOrder()).toList();
		List<Length> rooms = new ArrayList<>();
		for (Length piece : pieces) {
			int bar = 0;
			while (bar < rooms.size() && rooms.get(bar).isLessThan(piece)) {
				bar++;
			}
			if (bar == rooms.size()) {
				rooms.add(stock.length().minus(job.endTrim()));
			}
			rooms.set(bar, rooms.get(bar).minus(piece).minus(job.kerf()));
		}
		return rooms.size();
	}

	@Property(tries = 60)
	void profilesAddUp(@ForAll @IntRange(min = 0, max = 100_000) int seed) {
		CuttingJob one = new RandomJobs(seed).job(10, true);
		CuttingJob two = renamed(new RandomJobs(seed + 1L).job(10, true), one);
		CuttingJob both = new CuttingJob(joined(one.pieces(), two.pieces()), joined(one.stock(), two.stock()),
			joined(one.offcuts(), two.offcuts()), one.kerf(), one.endTrim(), one.shortestOffcut());
		CuttingPlan plan = plan(both);
		CuttingPlan first = plan(one);
		CuttingPlan second = plan(two);
		assertEquals(0, first.cost().add(second.cost()).compareTo(plan.cost()));
		assertEquals(0, first.lowerBound().add(second.lowerBound()).compareTo(plan.lowerBound()));
		if (plan.optimal() && first.optimal() && second.optimal()) {
			assertEquals(first.longestRemainder().max(second.longestRemainder()), plan.longestRemainder());
		}
	}

	private static <T> List<T> joined(List<T> a, List<T> b) {
		return Stream.concat(a.stream(), b.stream()).toList();
	}

	private static CuttingJob renamed(CuttingJob job, CuttingJob like) {
		return new CuttingJob(job.pieces().stream().map(row -> new PieceDemand(row.label(), "base", row.length(), row.quantity())).toList(),
			job.stock().stream().map(row -> new StockLength("base", row.length(), row.price(), row.available())).toList(),
			job.offcuts().stream().map(row -> new Offcut(row.label(), "base", row.length())).toList(), like.kerf(), like.endTrim(),
			like.shortestOffcut());
	}

	@Property(tries = 60)
	void planNeverGetsWorse(@ForAll @IntRange(min = 0, max = 100_000) int seed) {
		CuttingJob job = new RandomJobs(seed).job(30, seed % 2 == 0);
		List<CuttingPlan> seen = new ArrayList<>();
		CuttingPlan last = new CuttingPlanner().plan(job, new PlanWatch() {
			@Override
			public boolean stopped() {
				return seen.size() > seed % 5;
			}

			@Override
			public void improved(CuttingPlan best) {
				PlanCheck.check(job, best);
				seen.add(best);
			}
		});
		assertEquals(last, seen.getLast());
		for (int i = 1; i < seen.size(); i++) {
			assertTrue(ExhaustivePlan.of(seen.get(i)).compareTo(ExhaustivePlan.of(seen.get(i - 1))) <= 0, "plan " + i + " is worse");
		}
	}
}
