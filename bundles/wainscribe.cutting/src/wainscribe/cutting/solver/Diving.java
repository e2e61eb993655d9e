// SPDX-License-Identifier: EPL-2.0
package wainscribe.cutting.solver;

import java.util.Comparator;
import java.util.List;
import java.util.function.Predicate;

/**
 * Makes a packing from the linear relaxation: patterns are cut as often as they are used in whole numbers, then the one nearest to
 * another whole, and the relaxation of the rest is solved again (Belov and Scheithauer 2006, Eur. J. Oper. Res. 171(1), 85-106).
 */
final class Diving {

	private static final double TINY = 1e-6;
	private static final double LIKELY = 0.6;
	private static final int SHARES_A_STEP = 12;

	private final CuttingTask task;
	private final ColumnGeneration generation;
	private final SearchLimit limit;
	private final double[] costs;
	private final double[] missingCosts;

	Diving(CuttingTask task, ColumnGeneration generation, SearchLimit limit, double[] costs, double[] missingCosts) {
		this.task = task;
		this.generation = generation;
		this.limit = limit;
		this.costs = costs;
		this.missingCosts = missingCosts;
	}

	/**
	 * Dives once.
	 *
	 * @param skip   at which depth another than the best pattern is taken (limited discrepancy search); below zero never
	 * @param other  which one then, 1 for the second best
	 * @param enough handed each packing met on the way, some with pieces left open; says whether to end with it
	 */
	void dive(int skip, int other, Predicate<Packing> enough) {
		Packing packing = new Packing(task);
		for (int depth = 0; !packing.isComplete() && !limit.isReached(); depth++) {
			Packing simple = new Packing(packing);
			new FirstFit(task).complete(simple);
			if (enough.test(simple)) {
				return;
			}
			Relaxation relaxation = generation.solve(task, packing.open(), packing.left(), costs, missingCosts, ColumnGeneration.Goal.SOLUTION);
			if (!fix(packing, relaxation.shares(), depth == skip ? other : 0)) {
				return;
			}
		}
		enough.test(packing);
	}

	private boolean fix(Packing packing, List<RestrictedMaster.Share> shares, int other) {
		int openBefore = open(packing);
		if (other == 0) {
			for (RestrictedMaster.Share share : shares) {
				packing.cut(share.column().pattern(task.items()), (int) Math.floor(share.times() + TINY));
			}
		}
		if (open(packing) == openBefore) {
			fixNearest(packing, shares, other);
		}
		return open(packing) < openBefore;
	}

	/** Of a large problem several at once, those that are nearest to a whole and don't want the same pieces. */
	private void fixNearest(Packing packing, List<RestrictedMaster.Share> shares, int other) {
		List<RestrictedMaster.Share> order = shares.stream()
			.sorted(Comparator.comparingDouble((RestrictedMaster.Share share) -> -Math.rint(share.times() / TINY))
				.thenComparingLong(share -> -share.column().weight()).thenComparingInt(share -> share.column().items()[0]))
			.toList();
		int most = Math.max(1, shares.size() / SHARES_A_STEP);
		for (int s = Math.min(other, order.size() - 1), fixed = 0; s >= 0 && s < order.size() && fixed < most; s++) {
			Pattern pattern = order.get(s).column().pattern(task.items());
			if (fixed == 0 || order.get(s).times() > LIKELY && pattern.timesWithin(packing.open(), packing.left()[pattern.bar()]) > 0) {
				packing.cut(pattern, 1);
				fixed++;
			}
		}
	}

	private static int open(Packing packing) {
		int sum = 0;
		for (int count : packing.open()) {
			sum += count;
		}
		return sum;
	}
}
