// SPDX-License-Identifier: EPL-2.0
package wainscribe.cutting.solver;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** Solves the linear relaxation: master problem and pricing in turn until no pattern would improve it (Gilmore and Gomory 1961). */
final class ColumnGeneration {

	private static final int SCALE_BITS = 40;
	/** Bits that the value of all items may take, with room to spare. */
	private static final int SUM_BITS = 60;
	private static final double DEAREST_MISSING = 50;
	private static final double TOLERANCE = 1e-8;
	private static final int COLUMNS_A_BAR = 6;
	/** What a round counts for, so that a step takes about as long here as in a search over patterns. */
	private static final long STEPS_A_ROUND = 100;
	private static final long STEPS_AN_ITEM = 8;
	/** Rounds after which a mere solution is good enough. */
	private static final int ROUNDS = 12;

	private final ColumnPool pool;
	private final SearchLimit limit;
	private final PricingKnapsack pricing;
	private final double wholeScale;

	ColumnGeneration(CuttingTask task, ColumnPool pool, SearchLimit limit) {
		this.pool = pool;
		this.limit = limit;
		pricing = new PricingKnapsack(task.weights());
		wholeScale = Math.scalb(1.0, Math.min(SCALE_BITS, SUM_BITS - Math.getExponent(DEAREST_MISSING * (task.pieces() + 1)) - 1));
	}

	/**
	 * Solves it.
	 *
	 * @param task         items and bars
	 * @param demand       how many of each item
	 * @param limits       how many bars of each type
	 * @param costs        cost of a bar of each type
	 * @param missingCosts cost of a missing piece of each item type
	 * @param goal         what is wanted of it
	 */
	Relaxation solve(CuttingTask task, int[] demand, int[] limits, double[] costs, double[] missingCosts, Goal goal) {
		RestrictedMaster master = new RestrictedMaster(demand, limits, costs, missingCosts);
		pool.fitting(task, demand, limits).forEach(master::add);
		long[] capacities = new long[limits.length];
		for (int k = 0; k < limits.length; k++) {
			capacities[k] = limits[k] > 0 ? task.bars().get(k).capacity() : 0;
		}
		double scale = wholeScale / Math.max(max(costs), goal == Goal.NOTHING_MISSING ? max(missingCosts) : 0);
		boolean ended = false;
		for (int round = 0; !ended && (round < ROUNDS || goal != Goal.SOLUTION) && !limit.isReached() && master.solve(); round++) {
			limit.spend(STEPS_A_ROUND + STEPS_AN_ITEM * task.items());
			if (goal == Goal.NOTHING_MISSING && master.missing() < TOLERANCE) {
				break;
			}
			ended = !price(task, demand, capacities, costs, master, scale);
		}
		Optional<DualCut> cut = ended && goal != Goal.SOLUTION ? Optional.of(cut(task, demand, master, scale)) : Optional.empty();
		return new Relaxation(master.cost(), master.missing(), master.shares(), cut);
	}

	/** What is wanted of a relaxation. */
	enum Goal {
		/** A solution and what its duals prove. */
		PROOF,
		/** A solution. */
		SOLUTION,
		/** Whether all pieces find a place; if not, the proof. */
		NOTHING_MISSING
	}

	private static double max(double[] numbers) {
		return Arrays.stream(numbers).max().orElse(0);
	}

	private static long[] values(RestrictedMaster master, int items, double scale) {
		long[] values = new long[items];
		for (int i = 0; i < items; i++) {
			// an item not wanted any more is worth nothing
			values[i] = (long) Math.floor(master.dual(i) * scale);
		}
		return values;
	}

	private boolean price(CuttingTask task, int[] demand, long[] capacities, double[] costs, RestrictedMaster master, double scale) {
		long[] above = new long[capacities.length];
		for (int k = 0; k < above.length; k++) {
			above[k] = (long) ((costs[k] + master.barDual(k)) * scale * (1 + TOLERANCE) + wholeScale * TOLERANCE);
		}
		pricing.solve(values(master, task.items(), scale), demand, capacities, above, true);
		List<Pattern> patterns = pricing.patterns(COLUMNS_A_BAR);
		for (Pattern pattern : patterns) {
			Column column = Column.of(task, pattern);
			pool.add(column);
			master.add(column);
		}
		return !patterns.isEmpty();
	}

	/** The worth of each bar type, used or not, is found anew and exactly, so nothing rests on floating point. */
	private DualCut cut(CuttingTask task, int[] demand, RestrictedMaster master, double scale) {
		long[] capacities = task.bars().stream().mapToLong(BarType::capacity).toArray();
		long[] values = values(master, task.items(), scale);
		pricing.solve(values, demand, capacities, new long[capacities.length], false);
		long need = 0;
		for (int i = 0; i < values.length; i++) {
			need = Math.addExact(need, Math.multiplyExact(values[i], demand[i]));
		}
		long[] worths = new long[capacities.length];
		for (int k = 0; k < worths.length; k++) {
			worths[k] = pricing.value(k);
		}
		return new DualCut(values, worths, need);
	}
}
