// SPDX-License-Identifier: EPL-2.0
package wainscribe.benchmarks.cutting;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.OptionalLong;

import wainscribe.benchmarks.Report;
import wainscribe.benchmarks.Samples;
import wainscribe.cutting.CuttingJob;
import wainscribe.cutting.CuttingPlan;

/** The cutting plan: rooms against a general solver, published sets, and how time grows to a whole house. */
public final class CuttingBenchmark {

	private static final double OURS_SECONDS = 60;
	private static final double GENERAL_SECONDS = 20;
	private static final double SET_SECONDS = 60;
	private static final double HOUSE_SECONDS = 15;
	private static final int HOUSES = 9;
	private static final int WARM_UP = 10;
	private static final int SMALL = 150;
	private static final int LARGE = 1500;
	private static final double CLOSE = 1.005;

	/**
	 * Room-size jobs against a general solver.
	 *
	 * @param jobs how many
	 * @param seed of the first
	 * @return whether all are proved, equal, and fast enough
	 */
	public boolean rooms(int jobs, long seed) {
		AssignmentModel.load();
		for (int i = 0; i < WARM_UP; i++) {
			new TimedPlan(GeneratedJob.ofRoom(100_000 + i), 2, false);
		}
		Samples ours = new Samples();
		Samples general = new Samples();
		int proved = 0;
		int both = 0;
		int generalProved = 0;
		int different = 0;
		for (int i = 0; i < jobs; i++) {
			CuttingJob job = GeneratedJob.ofRoom(seed + i);
			TimedPlan timed = new TimedPlan(job, OURS_SECONDS, false);
			ours.add(timed.costNanos() / 1e6);
			proved += timed.plan().isCostProved() ? 1 : 0;
			both += timed.plan().optimal() ? 1 : 0;
			long from = System.nanoTime();
			OptionalLong cost = new AssignmentModel(job, firstCost(job).cost()).solve(GENERAL_SECONDS);
			general.add((System.nanoTime() - from) / 1e6);
			generalProved += cost.isPresent() ? 1 : 0;
			different += cost.isPresent() && cost.getAsLong() != timed.plan().cost().movePointRight(2).longValueExact() ? 1 : 0;
			System.err.println("  " + (i + 1) + " of " + jobs + " jobs");
		}
		double ratio = ours.median() / general.median();
		Report.line("Jobs with cost and longest remainder proved", "%d of %d", both, jobs);
		Report.line("Cost proved least: median (largest) time", "%.1f ms (%.0f ms)", ours.median(), ours.most());
		Report.line("General solver (model and search): median (largest) time", "%.0f ms (%.0f ms)", general.median(), general.most());
		Report.line("Jobs the general solver proved in " + (int) GENERAL_SECONDS + " s (others count as that)", "%d of %d", generalProved, jobs);
		Report.figure("Of those with another cost", "%.0f", different, "0", different == 0);
		Report.figure("Jobs with the cost proved", "%.0f", proved, "all " + jobs, proved == jobs);
		Report.figure("Median against the general solver's median", "%.5f", ratio, "at most 0.2", ratio <= 0.2);
		return proved == jobs && different == 0 && ratio <= 0.2;
	}

	/** The first plan, which is there at once. */
	private static CuttingPlan firstCost(CuttingJob job) {
		return new TimedPlan(job, 0, false).plan();
	}

	/**
	 * Published sets of 60 to 250 pieces.
	 *
	 * @param folder where they are
	 * @return whether enough are proved and none is far off
	 */
	public boolean sets(Path folder) throws IOException {
		List<PublishedSet> sets = PublishedSet.all(folder);
		Samples times = new Samples();
		int proved = 0;
		int asked = 0;
		int worst = 0;
		int wrong = 0;
		for (PublishedSet set : sets) {
			TimedPlan timed = new TimedPlan(set.job(), SET_SECONDS, true);
			int bars = timed.plan().cost().intValueExact();
			boolean sure = timed.plan().isCostProved();
			wrong += sure && bars != set.optimum() || timed.plan().lowerBound().intValueExact() > set.optimum() ? 1 : 0;
			if (set.pieces() >= 60 && set.pieces() <= 250) {
				asked++;
				proved += sure ? 1 : 0;
				worst = Math.max(worst, bars - set.optimum());
				times.add(timed.costNanos() / 1e6);
			}
			if (!sure) {
				Report.line("Not proved: " + set.name(), "%d bars, bound %s, optimum %d", bars, timed.plan().lowerBound().toBigInteger(), set.optimum());
			}
		}
		double share = 100.0 * proved / asked;
		Report.line("Time, median (largest)", "%.0f ms (%.0f ms)", times.median(), times.most());
		Report.figure("All " + sets.size() + " sets, proved wrongly", "%.0f", wrong, "0", wrong == 0);
		Report.figure("Proved, of " + asked + " sets of 60 to 250 pieces", "%.1f %%", share, "at least 95 %", share >= 95);
		Report.figure("Most bars above the optimum", "%.0f", worst, "at most 1", worst <= 1);
		return wrong == 0 && share >= 95 && worst <= 1;
	}

	/**
	 * Houses of 150 and 1,500 pieces.
	 *
	 * @param seed of the first
	 * @return whether all plans are near their bound and time grows slowly enough
	 */
	public boolean houses(long seed) {
		for (int i = 0; i < 3; i++) {
			TimedPlan.ofProcessor(GeneratedJob.ofHouse(100_000 + i, LARGE), 5);
		}
		Samples gaps = new Samples();
		Samples first = new Samples();
		Samples growth = new Samples();
		Samples provedGrowth = new Samples();
		int proved = 0;
		for (int i = 0; i < HOUSES; i++) {
			TimedPlan small = TimedPlan.ofProcessor(GeneratedJob.ofHouse(seed + i, SMALL), HOUSE_SECONDS);
			TimedPlan large = TimedPlan.ofProcessor(GeneratedJob.ofHouse(seed + i, LARGE), HOUSE_SECONDS);
			gaps.add(100 * (large.plan().cost().doubleValue() / large.plan().lowerBound().doubleValue() - 1));
			first.add(large.nanosWithin(CLOSE) / 1e6);
			growth.add((double) large.nanosWithin(CLOSE) / small.nanosWithin(CLOSE));
			provedGrowth.add((double) large.costNanos() / small.costNanos());
			proved += large.plan().isCostProved() ? 1 : 0;
		}
		double wanted = LARGE * Math.log(LARGE) / (SMALL * Math.log(SMALL));
		Report.line("Houses of 1,500 pieces with the cost proved least", "%d of %d", proved, HOUSES);
		Report.line("Time to a plan within 0.5 % of the bound, median", "%.0f ms", first.median());
		Report.line("Growth of the time until the cost is proved, median", "%.1f", provedGrowth.median());
		Report.figure("Plan above its bound, largest", "%.3f %%", gaps.most(), "at most 0.5 %", gaps.most() <= 0.5);
		Report.figure("Growth of the time to a plan within 0.5 % of the bound, median", "%.1f", growth.median(),
			String.format(java.util.Locale.ROOT, "at most %.1f", wanted), growth.median() <= wanted);
		return gaps.most() <= 0.5 && growth.median() <= wanted;
	}
}
