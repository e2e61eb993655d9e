// SPDX-License-Identifier: EPL-2.0
package wainscribe.benchmarks;

import java.util.Optional;

import wainscribe.benchmarks.general.GeneralSolver;
import wainscribe.benchmarks.general.Terms;
import wainscribe.benchmarks.rooms.GeneratedHome;
import wainscribe.benchmarks.rooms.RoomGenerator.Density;
import wainscribe.layout.solver.RoomSolver;
import wainscribe.layout.solver.RoomTask;

/**
 * The layout solver against a general constraint solver: the same rooms, the same optimum in every term, both timed room by
 * room in turn.
 */
final class SolverBenchmark {

	private static final int WANTED = 50;
	private static final int WARM_UP = 20;
	private static final int WARM_UP_SEEDS = 100_000;
	private static final int REPEATS = 7;
	private static final long LIMIT = 60_000_000_000L;

	private final Samples ours = new Samples();
	private final Samples general = new Samples();
	private final Samples ratios = new Samples();
	private final Samples searchRatios = new Samples();
	private int same;
	private int unfinished;

	/**
	 * Runs the comparison.
	 *
	 * @param rooms number of rooms
	 * @param seed  of the first room
	 * @return whether all optima are the same and the figure wanted is reached
	 */
	boolean run(int rooms, long seed) {
		for (int i = 0; i < WARM_UP; i++) {
			RoomTask task = task(WARM_UP_SEEDS + i);
			for (int r = 0; r < REPEATS; r++) {
				new RoomSolver(task).best();
			}
			new GeneralSolver(task, LIMIT).solve();
		}
		for (int i = 0; i < rooms; i++) {
			compare(seed + i);
			if ((i + 1) % 20 == 0) {
				System.err.println("  " + (i + 1) + " of " + rooms + " rooms");
			}
		}
		boolean done = same == rooms && ratios.median() >= WANTED;
		Report.line("Rooms solved by both, same optimum in all nine terms", "%d of %d", same, rooms);
		Report.line("Rooms the general solver did not finish in 60 s (counted as 60 s)", "%d", unfinished);
		Report.line("Layout solver, median", "%.2f ms", ours.median());
		Report.line("General solver (models and search), median", "%.0f ms", general.median());
		Report.line("Ratio, smallest / lower quartile / upper quartile / largest", "%.0f / %.0f / %.0f / %.0f", ratios.least(),
				ratios.share(0.25), ratios.share(0.75), ratios.most());
		Report.line("Ratio if only the general solver's search counted, median", "%.0f", searchRatios.median());
		Report.figure("Ratio, median", "%.0f", ratios.median(), "at least " + WANTED, done);
		return done;
	}

	private static RoomTask task(long seed) {
		return Design.task(GeneratedHome.ofOne(seed, Density.TYPICAL));
	}

	private void compare(long seed) {
		RoomTask task = task(seed);
		Samples times = new Samples();
		Terms terms = null;
		for (int i = 0; i < REPEATS; i++) {
			long from = System.nanoTime();
			RoomSolver.Answer answer = new RoomSolver(task).best();
			times.add(System.nanoTime() - from);
			terms = Terms.of(answer.layout().score());
		}
		long from = System.nanoTime();
		Optional<GeneralSolver.Answer> answer = new GeneralSolver(task, LIMIT).solve();
		long total = answer.map(GeneralSolver.Answer::tableNanos).map(tables -> System.nanoTime() - from - tables).orElse(LIMIT);
		ours.add(times.median() / 1e6);
		general.add(total / 1e6);
		ratios.add(total / times.median());
		searchRatios.add(answer.map(GeneralSolver.Answer::searchNanos).orElse(LIMIT) / times.median());
		if (answer.isEmpty()) {
			unfinished++;
		} else if (answer.get().terms().equals(terms)) {
			same++;
		} else {
			System.out.println("seed " + seed + " differs: layout solver " + terms + ", general solver " + answer.get().terms());
		}
	}
}
