// SPDX-License-Identifier: EPL-2.0
package wainscribe.cutting.solver;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

import wainscribe.cutting.solver.ColumnGeneration.Goal;
import wainscribe.cutting.solver.PatternSearch.End;

/**
 * Finds the least cost. The linear relaxation gives a bound and a first dive; then the numbers of bars are gone through by rising
 * cost and each is asked whether it holds all pieces, until one does. What refutes numbers of bars is kept as a cut and refutes others.
 */
final class CostSearch {

	private static final int ROOT_DIVES = 8;
	private static final int MOST_CUTS = 60;
	private static final long SEARCH_STEPS = 3_000_000;

	private final CuttingTask task;
	private final Incumbent incumbent;
	private final ColumnPool pool;
	private final SearchLimit limit;
	private final List<DualCut> cuts = new ArrayList<>();
	private final List<int[]> failed = new ArrayList<>();
	private final List<int[]> undecided = new ArrayList<>();
	private long lowerBound;
	private boolean proved;

	CostSearch(CuttingTask task, Incumbent incumbent, ColumnPool pool, SearchLimit limit) {
		this.task = task;
		this.incumbent = incumbent;
		this.pool = pool;
		this.limit = limit;
		cuts.add(DualCut.material(task));
		raise(cuts.getFirst());
	}

	long lowerBound() {
		return lowerBound;
	}

	boolean isProved() {
		return proved;
	}

	/** Returns the cuts found, which hold for all packings. */
	List<DualCut> cuts() {
		return cuts;
	}

	/** Returns numbers of bars that were proved to be too few. */
	List<int[]> failed() {
		return failed;
	}

	private void raise(DualCut cut) {
		lowerBound = Math.max(lowerBound, MaterialBound.cost(task.bars(), cut.worths(), BigInteger.valueOf(cut.need())));
		proved = incumbent.cost() <= lowerBound;
	}

	/** Goes on until the cost is proved least or the limit is reached. */
	void run() {
		proved = incumbent.cost() <= lowerBound;
		if (!proved) {
			relax();
		}
		if (!proved) {
			levels();
		}
	}

	private void relax() {
		double[] costs = task.bars().stream().mapToDouble(BarType::cost).toArray();
		double[] missing = new double[task.items()];
		double most = Arrays.stream(costs).max().orElse(1);
		Arrays.fill(missing, 50 * most);
		ColumnGeneration generation = new ColumnGeneration(task, pool, limit);
		Relaxation root = generation.solve(task, task.demands(), task.limits(), costs, missing, Goal.PROOF);
		root.cut().ifPresent(cut -> {
			cuts.add(cut);
			raise(cut);
		});
		Diving diving = new Diving(task, generation, limit, costs, missing);
		Downsizing downsizing = new Downsizing(task);
		for (int d = 0; d < ROOT_DIVES && !proved && !limit.isReached(); d++) {
			long before = incumbent.cost();
			diving.dive(d == 0 ? -1 : (d - 1) / 2, 1 + (d - 1) % 2, packing -> {
				if (packing.isComplete()) {
					incumbent.offer(downsizing.of(packing));
					proved = incumbent.cost() <= lowerBound;
				}
				return proved;
			});
			if (d > 0 && incumbent.cost() == before) {
				return;
			}
		}
	}

	private void levels() {
		while (!proved && !limit.isReached()) {
			Optional<int[]> numbers;
			try {
				numbers = new BarMixes(task.bars(), cuts, failed, undecided).cheapest(lowerBound, incumbent.cost());
			} catch (BarMixes.TooManyMixesException e) {
				return;
			}
			boolean sure = undecided.isEmpty();
			if (numbers.isEmpty()) {
				lowerBound = sure ? incumbent.cost() : lowerBound;
				proved = sure;
				return;
			}
			lowerBound = sure ? Math.max(lowerBound, cost(numbers.get())) : lowerBound;
			FixedBars.Answer answer = ask(numbers.get());
			if (answer.end() == End.FOUND) {
				incumbent.offer(new Downsizing(task).of(answer.packing().orElseThrow()));
				proved = incumbent.cost() <= lowerBound;
			} else if (answer.cut().isPresent() && cuts.size() < MOST_CUTS) {
				cuts.add(answer.cut().get());
			} else {
				(answer.end() == End.IMPOSSIBLE ? failed : undecided).add(numbers.get());
			}
		}
	}

	private long cost(int[] numbers) {
		long cost = 0;
		for (int k = 0; k < numbers.length; k++) {
			cost += numbers[k] * task.bars().get(k).cost();
		}
		return cost;
	}

	private FixedBars.Answer ask(int[] numbers) {
		List<BarType> bars = new ArrayList<>();
		for (int k = 0; k < numbers.length; k++) {
			bars.add(task.bars().get(k).withLimit(numbers[k]));
		}
		return new FixedBars(task.withBars(bars), cuts, pool, limit).answer(SEARCH_STEPS);
	}
}
