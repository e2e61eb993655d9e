// SPDX-License-Identifier: EPL-2.0
package wainscribe.cutting.solver;

import java.util.List;

/** Cuts each pattern of a packing from the cheapest bars that still hold it. */
final class Downsizing {

	private final CuttingTask task;

	Downsizing(CuttingTask task) {
		this.task = task;
	}

	/**
	 * Returns the same patterns on cheaper bars.
	 *
	 * @param packing any packing
	 * @return a packing of the same pieces that costs no more
	 */
	Packing of(Packing packing) {
		List<Packing.Use> uses = packing.uses();
		int[] left = packing.left().clone();
		int[][] moves = new int[uses.size()][task.bars().size()];
		for (int u = 0; u < uses.size(); u++) {
			moves[u][uses.get(u).pattern().bar()] = uses.get(u).times();
		}
		boolean moved = true;
		while (moved) {
			moved = false;
			for (int u = 0; u < uses.size(); u++) {
				moved |= move(task.weight(uses.get(u).pattern().counts()), moves[u], left);
			}
		}
		Packing result = new Packing(task);
		for (int u = 0; u < uses.size(); u++) {
			for (int k = 0; k < moves[u].length; k++) {
				result.cut(new Pattern(k, uses.get(u).pattern().counts()), moves[u][k]);
			}
		}
		return result;
	}

	private boolean move(long weight, int[] times, int[] left) {
		boolean moved = false;
		for (int from = 0; from < times.length; from++) {
			for (int to = 0; to < times.length && times[from] > 0; to++) {
				BarType better = task.bars().get(to);
				if (left[to] > 0 && better.capacity() >= weight && better.cost() < task.bars().get(from).cost()) {
					int count = Math.min(left[to], times[from]);
					times[from] -= count;
					times[to] += count;
					left[from] += count;
					left[to] -= count;
					moved = true;
				}
			}
		}
		return moved;
	}
}
