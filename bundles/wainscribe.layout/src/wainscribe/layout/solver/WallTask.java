// SPDX-License-Identifier: EPL-2.0
package wainscribe.layout.solver;

import java.util.Comparator;
import java.util.List;

/**
 * One wall of the layout problem.
 *
 * @param bands    its tiers from below; the first two match where their runs have the same ends
 * @param barriers what cuts runs
 * @param islands  what strips keep off
 */
public record WallTask(List<Band> bands, List<Barrier> barriers, List<Island> islands) {

	/** Copies the lists and sorts them from left to right. */
	public WallTask {
		bands = List.copyOf(bands);
		barriers = barriers.stream().sorted(Comparator.comparingLong((Barrier barrier) -> barrier.outline().x0())
				.thenComparingLong(barrier -> barrier.outline().x1()).thenComparingInt(Barrier::element)).toList();
		islands = islands.stream().sorted(Comparator.comparingLong((Island island) -> island.outline().x0())
				.thenComparingLong(island -> island.outline().x1()).thenComparingInt(Island::element)).toList();
	}
}
