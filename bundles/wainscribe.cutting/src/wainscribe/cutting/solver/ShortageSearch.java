// SPDX-License-Identifier: EPL-2.0
package wainscribe.cutting.solver;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.PriorityQueue;
import java.util.Set;

import wainscribe.cutting.solver.PatternSearch.End;

/**
 * What to leave out where the bars don't hold all pieces: as little length as possible; of equal lengths what makes the packing
 * cheaper, then what leaves the longer rest. Pieces to leave out are tried by rising sum of their lengths; before that a dive
 * that values pieces by their length makes a good packing.
 */
final class ShortageSearch {

	private static final int MOST_TRIES = 4000;
	private static final long STEPS_A_TRY = 100_000;

	/** Pieces left out, as places in a list of all pieces by rising length. */
	private record Omission(long length, int[] places) {
	}

	private final CuttingTask task;
	private final Incumbent incumbent;
	private final ColumnPool pool;
	private final SearchLimit limit;
	private final int[] pieces;
	private boolean proved;
	private long lowerBound;

	ShortageSearch(CuttingTask task, Incumbent incumbent, ColumnPool pool, SearchLimit limit) {
		this.task = task;
		this.incumbent = incumbent;
		this.pool = pool;
		this.limit = limit;
		List<Integer> all = new ArrayList<>();
		for (int i = task.items() - 1; i >= 0; i--) {
			for (int copy = 0; copy < task.demand(i); copy++) {
				all.add(i);
			}
		}
		pieces = all.stream().mapToInt(Integer::intValue).toArray();
	}

	/** Returns whether the best packing is proved best in all respects. */
	boolean isProved() {
		return proved;
	}

	/** Returns a bound on the cost of packings that leave out as little; 0 as long as that is not proved. */
	long lowerBound() {
		return lowerBound;
	}

	void run() {
		dive();
		long missing = task.weight(task.demands());
		for (BarType bar : task.bars()) {
			missing -= bar.capacity() * bar.limit();
		}
		PriorityQueue<Omission> queue = new PriorityQueue<>(
			Comparator.comparingLong(Omission::length).thenComparing(Omission::places, Arrays::compare));
		queue.add(new Omission(0, new int[0]));
		long least = Long.MAX_VALUE;
		long cost = Long.MAX_VALUE;
		boolean sure = true;
		Set<List<Integer>> seen = new HashSet<>();
		for (int tries = 0; !queue.isEmpty() && queue.peek().length <= least; tries++) {
			if (tries == MOST_TRIES || limit.isReached()) {
				return;
			}
			Omission omission = queue.poll();
			follow(queue, omission);
			int[] open = task.demands();
			long weight = 0;
			for (int place : omission.places) {
				open[pieces[place]]--;
				weight += task.weight(pieces[place]);
			}
			if (weight < missing || !seen.add(Arrays.stream(open).boxed().toList())) {
				continue;
			}
			PartialTask part = new PartialTask(task, open, task.limits());
			End end = fits(part);
			sure &= end != End.CUT_SHORT;
			if (end == End.FOUND) {
				least = omission.length;
				PartialSolution solution = new PartialSolution(part);
				sure &= solution.proved;
				cost = Math.min(cost, solution.bound);
			}
		}
		proved = sure;
		lowerBound = sure && cost < Long.MAX_VALUE ? cost : 0;
	}

	/** The next omissions: one more piece, or the last piece changed for the next longer one. */
	private void follow(PriorityQueue<Omission> queue, Omission omission) {
		int[] places = omission.places;
		int last = places.length == 0 ? -1 : places[places.length - 1];
		if (last + 1 == pieces.length) {
			return;
		}
		int[] more = Arrays.copyOf(places, places.length + 1);
		more[places.length] = last + 1;
		queue.add(new Omission(omission.length + length(last + 1), more));
		if (last >= 0) {
			int[] longer = places.clone();
			longer[places.length - 1] = last + 1;
			queue.add(new Omission(omission.length - length(last) + length(last + 1), longer));
		}
	}

	private long length(int place) {
		return task.weight(pieces[place]) - task.kerf();
	}

	private End fits(PartialTask part) {
		if (part.task().items() == 0) {
			return End.FOUND;
		}
		FixedBars.Answer answer = new FixedBars(part.task(), List.of(DualCut.material(part.task())), new ColumnPool(), limit)
			.answer(STEPS_A_TRY);
		answer.packing().ifPresent(packing -> offer(part, packing));
		return answer.end();
	}

	private void offer(PartialTask part, Packing packing) {
		Packing whole = new Packing(task);
		part.addTo(whole, packing);
		incumbent.offer(new Downsizing(task).of(whole));
	}

	/** The best packing of the pieces that are not left out. */
	private final class PartialSolution {

		private final boolean proved;
		private final long bound;

		private PartialSolution(PartialTask part) {
			if (part.task().items() == 0) {
				proved = true;
				bound = 0;
				return;
			}
			ProfileSolver solver = new ProfileSolver(part.task(), limit::isReached, () -> { });
			solver.improveCost();
			if (solver.isCostProved()) {
				solver.improveRest(task.kerf());
			}
			offer(part, solver.best());
			proved = solver.isCostProved() && solver.isRestProved();
			bound = solver.lowerBound();
		}
	}

	private void dive() {
		double most = task.weight(0);
		double[] missing = new double[task.items()];
		Arrays.setAll(missing, i -> (task.weight(i) - task.kerf()) / most);
		double[] costs = new double[task.bars().size()];
		Arrays.fill(costs, 1e-6);
		ColumnGeneration generation = new ColumnGeneration(task, pool, limit);
		new Diving(task, generation, limit, costs, missing).dive(-1, 0, packing -> {
			incumbent.offer(new Downsizing(task).of(packing));
			return packing.isComplete();
		});
	}
}
