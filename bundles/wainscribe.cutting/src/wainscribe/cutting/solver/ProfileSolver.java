// SPDX-License-Identifier: EPL-2.0
package wainscribe.cutting.solver;

import java.math.BigInteger;

/** Cuts the pieces of one profile: a good packing at once, then better ones and a better bound. */
public final class ProfileSolver {

	private final CuttingTask task;
	private Packing best;
	private long lowerBound;

	/**
	 * Makes a first packing.
	 *
	 * @param task the problem
	 */
	public ProfileSolver(CuttingTask task) {
		this.task = task;
		best = new Packing(task);
		offerStart(-1);
		for (int k = 0; k < task.bars().size(); k++) {
			offerStart(k);
		}
		if (best.isComplete()) {
			long[] worth = task.bars().stream().mapToLong(BarType::capacity).toArray();
			lowerBound = MaterialBound.cost(task.bars(), worth, BigInteger.valueOf(task.weight(task.demands())));
		}
	}

	private void offerStart(int bar) {
		Packing packing = new Packing(task);
		FirstFit fit = new FirstFit(task);
		if (bar < 0) {
			fit.complete(packing);
		} else {
			fit.complete(packing, bar);
		}
		offer(new Downsizing(task).of(packing));
	}

	private void offer(Packing packing) {
		long less = Long.compare(packing.openWeight(), best.openWeight());
		less = less == 0 ? Long.compare(packing.cost(), best.cost()) : less;
		less = less == 0 ? Long.compare(best.longestRest(), packing.longestRest()) : less;
		if (less < 0) {
			best = packing;
		}
	}

	/** Returns the best packing so far. */
	public Packing best() {
		return best;
	}

	/** Returns a bound on the cost of every packing that leaves as little open. */
	public long lowerBound() {
		return lowerBound;
	}

	/** Returns whether the cost is proved least. */
	public boolean isCostProved() {
		return best.isComplete() && best.cost() == lowerBound;
	}
}
