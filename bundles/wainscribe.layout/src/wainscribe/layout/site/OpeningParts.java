// SPDX-License-Identifier: EPL-2.0
package wainscribe.layout.site;

import java.util.ArrayList;
import java.util.List;

import wainscribe.layout.solver.Band;
import wainscribe.layout.solver.BandPart;
import wainscribe.layout.solver.Barrier;
import wainscribe.layout.solver.Limits;
import wainscribe.layout.solver.Line;
import wainscribe.layout.solver.StripSizes;

/**
 * The parts of a tier under and over openings that reach into it, in which strips go on.
 * <p>
 * Beside an opening a run ends as everywhere: with a field, or with a board. Under and over it the other of the two comes
 * next, so that fields and boards take turns there as well: battens stand at both edges of the cased width, and the fields of
 * a grid begin at the boards beside it. Openings with less than a field between them share a part.
 */
record OpeningParts(Limits limits, StripSizes sizes, List<Barrier> barriers) {

	/** A part and whether it lies over its opening. */
	record Part(Band band, boolean over) {
	}

	/** Returns the parts of a tier from left to right. */
	List<Part> of(Band tier) {
		List<Part> parts = new ArrayList<>();
		for (List<Barrier> group : groups(tier)) {
			long low = group.stream().mapToLong(barrier -> barrier.outline().y0()).min().orElseThrow();
			long high = group.stream().mapToLong(barrier -> barrier.outline().y1()).max().orElseThrow();
			add(parts, tier, group, tier.bottom(), Line.level(low), false);
			add(parts, tier, group, Line.level(high), tier.top(), true);
		}
		return parts;
	}

	private List<List<Barrier>> groups(Band tier) {
		List<List<Barrier>> groups = new ArrayList<>();
		long right = Long.MIN_VALUE / 2;
		for (Barrier barrier : barriers) {
			if (barrier.isOpening() && tier.isReachedBy(barrier.outline())) {
				if (groups.isEmpty() || barrier.outline().x0() - right >= shortest()) {
					groups.add(new ArrayList<>());
				}
				groups.get(groups.size() - 1).add(barrier);
				right = Math.max(right, barrier.outline().x1());
			}
		}
		return groups;
	}

	/** Returns the shortest run between two openings or an opening and a corner. */
	private long shortest() {
		return sizes.boardsAtEnds() ? limits.least() + 2 * limits.face()
				: (sizes.isGrid() ? 1 : 2) * limits.least() + limits.face();
	}

	private void add(List<Part> parts, Band tier, List<Barrier> group, Line bottom, Line top, boolean over) {
		long x0 = Math.max(tier.x0(), group.stream().mapToLong(barrier -> barrier.outline().x0()).min().orElseThrow());
		long x1 = Math.min(tier.x1(), group.stream().mapToLong(barrier -> barrier.outline().x1()).max().orElseThrow());
		if (x0 >= x1 || top.at(x0) - bottom.at(x0) < limits.least() || top.at(x1) - bottom.at(x1) < limits.least()) {
			return;
		}
		BandPart part = new BandPart(tier.bottom(), tier.top(), isBoard(x0 - tier.x0()), isBoard(tier.x1() - x1));
		parts.add(new Part(new Band(bottom, top, x0, x1, false, List.of(), part), over));
	}

	/** Next to a run the part begins with what that did not end with; in a corner, or beside what is no run, as a run does. */
	private boolean isBoard(long beside) {
		return sizes.boardsAtEnds() == beside < shortest();
	}
}
