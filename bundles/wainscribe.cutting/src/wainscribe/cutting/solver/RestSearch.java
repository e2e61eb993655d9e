// SPDX-License-Identifier: EPL-2.0
package wainscribe.cutting.solver;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

import wainscribe.cutting.solver.PatternSearch.End;

/**
 * Finds the longest rest on a single bar among the packings of least cost. For all numbers of bars of that cost, one bar is made
 * shorter: so that the pieces on it weigh no more than a given sum. Which sums can be reached is searched by halving.
 */
final class RestSearch {

	private static final long SEARCH_STEPS = 400_000;
	private static final int MOST_MIXES = 3000;

	/** Numbers of bars, one of which keeps the rest. */
	private record Candidate(int[] numbers, int bar, long leastWeight) {
	}

	private final CuttingTask task;
	private final Incumbent incumbent;
	private final ColumnPool pool;
	private final CostSearch costs;
	private final SearchLimit limit;
	private boolean proved;
	private long floor;

	RestSearch(CuttingTask task, Incumbent incumbent, ColumnPool pool, CostSearch costs, SearchLimit limit) {
		this.task = task;
		this.incumbent = incumbent;
		this.pool = pool;
		this.costs = costs;
		this.limit = limit;
	}

	boolean isProved() {
		return proved;
	}

	/**
	 * Runs the search.
	 *
	 * @param useless rests up to this are of no use
	 */
	void run(long useless) {
		floor = useless;
		if (task.items() == 0) {
			proved = true;
			return;
		}
		List<int[]> mixes = new EqualMixes(task.bars(), costs.cuts(), costs.failed(), incumbent.cost()).all(MOST_MIXES);
		proved = mixes.size() < MOST_MIXES;
		for (Candidate candidate : candidates(mixes)) {
			if (limit.isReached()) {
				proved = false;
				return;
			}
			search(candidate);
		}
	}

	private List<Candidate> candidates(List<int[]> mixes) {
		List<Candidate> candidates = new ArrayList<>();
		long lightest = task.weight(task.items() - 1);
		for (int[] numbers : mixes) {
			for (int k = 0; k < numbers.length; k++) {
				if (numbers[k] > 0) {
					long least = task.bars().get(k).capacity() - costs.cuts().getFirst().slack(numbers);
					candidates.add(new Candidate(numbers, k, Math.max(lightest, least)));
				}
			}
		}
		candidates.sort(Comparator.comparingLong((Candidate c) -> c.leastWeight - task.bars().get(c.bar).capacity()));
		return candidates;
	}

	private long useful() {
		return Math.max(floor, incumbent.rest());
	}

	private void search(Candidate candidate) {
		long capacity = task.bars().get(candidate.bar).capacity();
		ReachableSums sums = new ReachableSums(task, candidate.leastWeight, capacity - useful() - 1);
		int low = 0;
		boolean first = true;
		while (!limit.isReached()) {
			int high = sums.countUpTo(capacity - useful() - 1);
			if (low >= high) {
				return;
			}
			int middle = first ? low : (low + high - 1) / 2;
			first = false;
			long before = useful();
			End end = ask(candidate, sums.get(middle));
			if (end != End.FOUND || useful() == before) {
				low = middle + 1;
				proved &= end == End.IMPOSSIBLE;
			}
		}
		proved = false;
	}

	private End ask(Candidate candidate, long weight) {
		List<BarType> bars = new ArrayList<>();
		for (int k = 0; k < candidate.numbers.length; k++) {
			bars.add(task.bars().get(k).withLimit(candidate.numbers[k] - (k == candidate.bar ? 1 : 0)));
		}
		bars.add(new BarType(weight, task.bars().get(candidate.bar).cost(), 1));
		CuttingTask shorter = task.withBars(bars);
		FixedBars.Answer answer = new FixedBars(shorter, List.of(DualCut.material(shorter)), pool, limit).answer(SEARCH_STEPS);
		answer.packing().ifPresent(packing -> incumbent.offer(restored(packing, candidate.bar)));
		return answer.end();
	}

	/** The packing on the bars there really are. If nothing is cut from the one that keeps the rest, the shortest piece moves there. */
	private Packing restored(Packing packing, int bar) {
		int special = task.bars().size();
		int shortest = task.items() - 1;
		boolean used = packing.left()[special] == 0;
		Packing result = new Packing(task);
		for (Packing.Use use : packing.uses()) {
			Pattern pattern = use.pattern().bar() == special ? new Pattern(bar, use.pattern().counts()) : use.pattern();
			int times = use.times();
			if (!used && pattern.counts()[shortest] > 0) {
				used = true;
				int[] fewer = pattern.counts().clone();
				fewer[shortest]--;
				int[] one = new int[fewer.length];
				one[shortest] = 1;
				result.cut(new Pattern(pattern.bar(), fewer), 1);
				result.cut(new Pattern(bar, one), 1);
				times--;
			}
			result.cut(pattern, times);
		}
		return result;
	}
}
