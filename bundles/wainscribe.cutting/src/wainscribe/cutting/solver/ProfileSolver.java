// SPDX-License-Identifier: EPL-2.0
package wainscribe.cutting.solver;

import java.util.List;
import java.util.function.BooleanSupplier;

/** Cuts the pieces of one profile: a good packing at once, then better ones and a better bound. */
public final class ProfileSolver {

	private static final long COST_STEPS = 40_000_000;
	private static final long REST_STEPS = 10_000_000;

	private final CuttingTask task;
	private final Incumbent incumbent;
	private final ColumnPool pool = new ColumnPool();
	private final CostSearch costs;
	private final BooleanSupplier stop;
	private RestSearch rests;
	private ShortageSearch shortage;

	/**
	 * Makes a first packing.
	 *
	 * @param task     the problem
	 * @param stop     asked often whether to end
	 * @param improved called after each better packing
	 */
	public ProfileSolver(CuttingTask task, BooleanSupplier stop, Runnable improved) {
		this.task = task;
		this.stop = stop;
		incumbent = new Incumbent(task, improved);
		for (int k = FirstFit.ANY; k < task.bars().size(); k++) {
			Packing packing = new Packing(task);
			new FirstFit(task).complete(packing, k);
			Packing cheaper = new Downsizing(task).of(packing);
			incumbent.offer(cheaper);
			pool.add(cheaper);
		}
		pool.addSimple(task);
		costs = new CostSearch(task, incumbent, pool, new SearchLimit(stop, COST_STEPS));
	}

	/** Makes a good packing in little time. */
	public void improveQuickly() {
		if (!isCostProved()) {
			Packing filled = new SlackFilling(task, new SearchLimit(stop, COST_STEPS)).run();
			incumbent.offer(new Downsizing(task).of(filled));
			pool.add(filled);
		}
	}

	/** Goes on until the cost is proved least, or the limit of work is reached or somebody says stop. */
	public void improveCost() {
		if (!incumbent.best().isComplete()) {
			FixedBars all = new FixedBars(task, List.of(DualCut.material(task)), pool, new SearchLimit(stop, COST_STEPS));
			all.answer(REST_STEPS).packing().ifPresent(incumbent::offer);
		}
		if (incumbent.best().isComplete()) {
			costs.run();
		} else {
			shortage = new ShortageSearch(task, incumbent, pool, new SearchLimit(stop, COST_STEPS));
			shortage.run();
		}
	}

	/**
	 * Looks for a packing of the same cost with a longer rest on a single bar.
	 *
	 * @param floor rests up to this are of no use
	 */
	public void improveRest(long floor) {
		if (isCostProved() && shortage == null) {
			rests = new RestSearch(task, incumbent, pool, costs, new SearchLimit(stop, REST_STEPS));
			rests.run(floor);
		}
	}

	/** Returns the best packing so far. */
	public Packing best() {
		return incumbent.best();
	}

	/** Returns a bound on the cost of every packing that leaves as little open. */
	public long lowerBound() {
		if (shortage != null) {
			return shortage.lowerBound();
		}
		return incumbent.best().isComplete() ? costs.lowerBound() : 0;
	}

	/** Returns whether the cost is proved least. */
	public boolean isCostProved() {
		return shortage != null ? shortage.isProved() : incumbent.best().isComplete() && costs.isProved();
	}

	/** Returns whether it is proved that no packing of this cost has a longer rest than the best, or than the floor asked for. */
	public boolean isRestProved() {
		return shortage != null ? shortage.isProved() : rests != null && rests.isProved();
	}
}
