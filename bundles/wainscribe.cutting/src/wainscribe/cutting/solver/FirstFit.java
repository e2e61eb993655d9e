// SPDX-License-Identifier: EPL-2.0
package wainscribe.cutting.solver;

/**
 * First fit decreasing for one bar at a time: the longest piece that still fits, again and again (Johnson 1973). Of the bar types
 * the one is taken whose filling costs least for its weight.
 */
final class FirstFit {

	/** Stands for all bar types. */
	static final int ANY = -1;

	private final CuttingTask task;

	FirstFit(CuttingTask task) {
		this.task = task;
	}

	/** Goes on with a packing until it is complete or no bar is left that holds anything. */
	void complete(Packing packing) {
		complete(packing, ANY);
	}

	/** Goes on with bars of one type, and when that is no use with any. */
	void complete(Packing packing, int bar) {
		int only = bar;
		while (!packing.isComplete()) {
			Pattern best = cheapestFilling(packing, only);
			if (best != null) {
				packing.cut(best, best.timesWithin(packing.open(), packing.left()[best.bar()]));
			} else if (only == ANY) {
				return;
			} else {
				only = ANY;
			}
		}
	}

	private Pattern cheapestFilling(Packing packing, int only) {
		Pattern best = null;
		double bestRate = Double.POSITIVE_INFINITY;
		for (int k = 0; k < task.bars().size(); k++) {
			if (packing.left()[k] > 0 && (only == ANY || only == k)) {
				Pattern filling = filling(packing.open(), k);
				double rate = rate(filling);
				if (rate < bestRate) {
					best = filling;
					bestRate = rate;
				}
			}
		}
		return best;
	}

	/** Cost for the weight; of bars that cost nothing the fullest first. */
	private double rate(Pattern filling) {
		long weight = task.weight(filling.counts());
		if (weight == 0) {
			return Double.POSITIVE_INFINITY;
		}
		BarType bar = task.bars().get(filling.bar());
		return bar.cost() == 0 ? -(double) weight / bar.capacity() : (double) bar.cost() / weight;
	}

	private Pattern filling(int[] open, int bar) {
		int[] counts = new int[open.length];
		long room = task.bars().get(bar).capacity();
		for (int i = 0; i < open.length; i++) {
			counts[i] = (int) Math.min(open[i], room / task.weight(i));
			room -= counts[i] * task.weight(i);
		}
		return new Pattern(bar, counts);
	}
}
