// SPDX-License-Identifier: EPL-2.0
package wainscribe.cutting.solver;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * Asks whether given bars hold all pieces, and how: simple heuristics, the linear relaxation, dives, then all patterns.
 */
final class FixedBars {

	private static final int DIVES = 24;

	/** The answer. */
	record Answer(PatternSearch.End end, Optional<Packing> packing, Optional<DualCut> cut) {

		static Answer found(Packing packing) {
			return new Answer(PatternSearch.End.FOUND, Optional.of(packing), Optional.empty());
		}
	}

	private final CuttingTask task;
	private final List<DualCut> cuts;
	private final ColumnGeneration generation;
	private final SearchLimit limit;
	private final double[] costs;
	private final double[] missing;
	private Packing found;

	/**
	 * Prepares the question.
	 *
	 * @param task  items, and bars of which there are as many as their limits say
	 * @param cuts  cuts that hold for these bars
	 * @param pool  columns known
	 * @param limit where to stop
	 */
	FixedBars(CuttingTask task, List<DualCut> cuts, ColumnPool pool, SearchLimit limit) {
		this.task = task;
		this.cuts = cuts;
		this.limit = limit;
		generation = new ColumnGeneration(task, pool, limit);
		costs = task.bars().stream().mapToDouble(bar -> 1e-6 * bar.capacity()).toArray();
		missing = new double[task.items()];
		Arrays.fill(missing, 20 * Arrays.stream(costs).max().orElse(1));
	}

	Answer answer(long searchSteps) {
		Packing simple = new Packing(task);
		new FirstFit(task).complete(simple);
		if (keep(simple)) {
			return Answer.found(found);
		}
		double[] each = new double[task.items()];
		Arrays.fill(each, 1);
		Relaxation relaxation = generation.solve(task, task.demands(), task.limits(), new double[task.bars().size()], each,
			ColumnGeneration.Goal.NOTHING_MISSING);
		if (relaxation.cut().isPresent() && relaxation.cut().get().slack(task.limits()) < 0) {
			return new Answer(PatternSearch.End.IMPOSSIBLE, Optional.empty(), relaxation.cut());
		}
		PatternSearch quick = new PatternSearch(task, cuts, limit.part(2000));
		PatternSearch.End end = quick.run();
		if (end == PatternSearch.End.CUT_SHORT && dives()) {
			return Answer.found(found);
		}
		if (end == PatternSearch.End.CUT_SHORT) {
			SearchLimit part = limit.part(searchSteps);
			List<DualCut> more = new ArrayList<>(cuts);
			wasteCut().ifPresent(more::add);
			quick = new PatternSearch(task, more, part);
			end = quick.run();
		}
		return new Answer(end, end == PatternSearch.End.FOUND ? quick.packing() : Optional.empty(), Optional.empty());
	}

	private boolean keep(Packing packing) {
		if (packing.isComplete()) {
			found = packing;
		}
		return found != null;
	}

	/** What the relaxation that wastes least says of patterns: those that waste much in its values can be left out. */
	private Optional<DualCut> wasteCut() {
		return generation.solve(task, task.demands(), task.limits(), costs, missing, ColumnGeneration.Goal.PROOF).cut();
	}

	private boolean dives() {
		Diving diving = new Diving(task, generation, limit, costs, missing);
		for (int d = 0; d < DIVES && found == null && !limit.isReached(); d++) {
			diving.dive(d == 0 ? -1 : (d - 1) / 2, 1 + (d - 1) % 2, this::keep);
		}
		return found != null;
	}
}
