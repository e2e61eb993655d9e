// SPDX-License-Identifier: EPL-2.0
package wainscribe.cutting.solver;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/** A problem with fewer pieces and bars, without the item types that are not wanted, and the way back from its packings. */
final class PartialTask {

	private final CuttingTask whole;
	private final int[] kept;
	private final CuttingTask task;

	/**
	 * Makes a part.
	 *
	 * @param whole  the whole problem
	 * @param demand how many of each item type are wanted
	 * @param limits how many bars of each type there are
	 */
	PartialTask(CuttingTask whole, int[] demand, int[] limits) {
		this.whole = whole;
		kept = IntStream.range(0, demand.length).filter(i -> demand[i] > 0).toArray();
		List<BarType> bars = new ArrayList<>();
		int pieces = IntStream.of(demand).sum();
		for (int k = 0; k < limits.length; k++) {
			bars.add(whole.bars().get(k).withLimit(Math.min(limits[k], pieces)));
		}
		task = new CuttingTask(IntStream.of(kept).mapToLong(whole::weight).toArray(), IntStream.of(kept).map(i -> demand[i]).toArray(), bars,
			whole.kerf());
	}

	CuttingTask task() {
		return task;
	}

	/** Adds what a packing of the part cuts to one of the whole. */
	void addTo(Packing packing, Packing part) {
		for (Packing.Use use : part.uses()) {
			int[] counts = new int[whole.items()];
			for (int i = 0; i < kept.length; i++) {
				counts[kept[i]] = use.pattern().counts()[i];
			}
			packing.cut(new Pattern(use.pattern().bar(), counts), use.times());
		}
	}
}
