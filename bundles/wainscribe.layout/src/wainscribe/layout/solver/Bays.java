// SPDX-License-Identifier: EPL-2.0
package wainscribe.layout.solver;

import java.util.ArrayList;
import java.util.List;

/**
 * Finds the bays of a tier: a frame of the cased width under and over each opening that reaches into it.
 * <p>
 * Openings nearer to each other than the gap share one, as windows above a tier do.
 */
final class Bays {

	private final Limits limits;
	private final WallTask wall;
	private final long gap;
	private final long gapY;

	Bays(Limits limits, WallTask wall, long gap, long gapY) {
		this.limits = limits;
		this.wall = wall;
		this.gap = gap;
		this.gapY = gapY;
	}

	List<Bay> find(Band band) {
		List<List<Barrier>> groups = new ArrayList<>();
		long right = Long.MIN_VALUE / 2;
		for (Barrier barrier : wall.barriers()) {
			if (barrier.isOpening() && band.isReachedBy(barrier.outline())) {
				if (groups.isEmpty() || barrier.outline().x0() - right >= gap) {
					groups.add(new ArrayList<>());
				}
				groups.get(groups.size() - 1).add(barrier);
				right = Math.max(right, barrier.outline().x1());
			}
		}
		List<Bay> bays = new ArrayList<>();
		for (List<Barrier> group : groups) {
			long low = group.stream().mapToLong(barrier -> barrier.outline().y0()).min().orElseThrow();
			long high = group.stream().mapToLong(barrier -> barrier.outline().y1()).max().orElseThrow();
			add(bays, band, group, false, band.bottom(), Line.level(low));
			add(bays, band, group, true, Line.level(high), band.top());
		}
		return bays;
	}

	private void add(List<Bay> bays, Band band, List<Barrier> group, boolean over, Line bottom, Line top) {
		long x0 = group.stream().mapToLong(barrier -> barrier.outline().x0()).min().orElseThrow();
		long x1 = group.stream().mapToLong(barrier -> barrier.outline().x1()).max().orElseThrow();
		FrameFit fit = new FrameFit(limits, wall.islands(), bottom, top, gap, gapY);
		if (x1 - x0 < limits.least() || x0 - band.x0() < gap || band.x1() - x1 < gap
				|| Math.min(fit.heightAt(x0), fit.heightAt(x1)) < limits.least()) {
			return;
		}
		Quad frame = fit.quad(x0, x1 - x0);
		if (isClear(frame, group)) {
			int near = fit.near(x0, x1 - x0);
			boolean legal = near != RunFit.ILLEGAL;
			bays.add(new Bay(over, bottom, top, frame, legal, legal ? near : 0, group.get(0).element()));
		}
	}

	private boolean isClear(Quad frame, List<Barrier> group) {
		Box bounds = frame.bounds();
		Box zone = new Box(bounds.x0() - gap, bounds.y0() - gapY, bounds.x1() + gap, bounds.y1() + gapY);
		return wall.barriers().stream().filter(barrier -> !group.contains(barrier))
				.noneMatch(barrier -> barrier.blocked(gap, gapY).overlaps(zone));
	}
}
