// SPDX-License-Identifier: EPL-2.0
package wainscribe.benchmarks.general;

import java.util.ArrayList;
import java.util.List;

import wainscribe.layout.solver.RoomTask;
import wainscribe.layout.solver.WallTask;

/**
 * Tables of a room at one gap: what may be chosen and what it costs.
 *
 * @param gap   the gap
 * @param walls for each wall its tiers from below
 */
record RoomAtGap(long gap, List<List<Tier>> walls) {

	/**
	 * A tier.
	 *
	 * @param partings ways to part it
	 * @param slots    for the first, second ... run of whatever parting is chosen, its rows
	 */
	record Tier(List<Parting> partings, List<List<Row>> slots) {
	}

	/**
	 * A filling of a run that one of the partings makes.
	 *
	 * @param parting number of the parting
	 * @param run     left and right end of the run; empty where the parting has fewer runs
	 * @param filling frames
	 */
	record Row(int parting, long[] run, Filling filling) {
	}

	private static final Filling NOTHING = new Filling(0, new int[5], 0, false);

	/** Works the tables out. */
	static RoomAtGap of(RoomTask task, long gap, boolean withSplits) {
		List<List<Tier>> walls = new ArrayList<>();
		for (WallTask wall : task.walls()) {
			walls.add(wall.bands().stream().filter(band -> band.x0() < band.x1())
					.map(band -> tier(new TierAtGap(task, wall, band, gap), withSplits)).toList());
		}
		return new RoomAtGap(gap, walls);
	}

	private static Tier tier(TierAtGap view, boolean withSplits) {
		List<Parting> partings = view.partings(withSplits);
		int most = partings.stream().mapToInt(parting -> parting.runs().size()).max().orElse(0);
		List<List<Row>> slots = new ArrayList<>();
		for (int k = 0; k < most; k++) {
			List<Row> rows = new ArrayList<>();
			for (int p = 0; p < partings.size(); p++) {
				List<long[]> runs = partings.get(p).runs();
				if (k < runs.size()) {
					for (Filling filling : view.legality().fillings(runs.get(k))) {
						rows.add(new Row(p, runs.get(k), filling));
					}
				} else {
					rows.add(new Row(p, new long[0], NOTHING));
				}
			}
			slots.add(rows);
		}
		return new Tier(partings, slots);
	}

	/** Returns the greatest value that each of the first five terms can have. */
	long[] bounds() {
		long[] bounds = new long[5];
		for (int t = 0; t < bounds.length; t++) {
			int term = t;
			for (List<Tier> wall : walls) {
				for (Tier tier : wall) {
					bounds[t] += tier.partings().stream().mapToInt(parting -> parting.terms()[term]).max().orElse(0);
					for (List<Row> rows : tier.slots()) {
						bounds[t] += rows.stream().mapToInt(row -> row.filling().terms()[term]).max().orElse(0);
					}
				}
			}
		}
		return bounds;
	}
}
