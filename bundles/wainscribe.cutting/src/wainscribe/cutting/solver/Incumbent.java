// SPDX-License-Identifier: EPL-2.0
package wainscribe.cutting.solver;

/** The best packing so far: least weight open, then least cost, then the longest rest. Only ever changed for a better one. */
final class Incumbent {

	private final Runnable improved;
	private Packing best;

	Incumbent(CuttingTask task, Runnable improved) {
		this.improved = improved;
		best = new Packing(task);
	}

	/** Keeps a packing if it is better; returns whether it is. */
	boolean offer(Packing packing) {
		int order = Long.compare(packing.openLength(), best.openLength());
		order = order == 0 ? Long.compare(packing.cost(), best.cost()) : order;
		order = order == 0 ? Long.compare(best.longestRest(), packing.longestRest()) : order;
		if (order < 0) {
			best = packing;
			improved.run();
		}
		return order < 0;
	}

	Packing best() {
		return best;
	}

	long cost() {
		return best.cost();
	}

	long rest() {
		return best.longestRest();
	}
}
