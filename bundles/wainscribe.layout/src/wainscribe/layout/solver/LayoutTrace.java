// SPDX-License-Identifier: EPL-2.0
package wainscribe.layout.solver;

import java.util.ArrayList;
import java.util.List;

/** Turns what a search found into runs and frames. */
final class LayoutTrace {

	private final RoomTask task;

	LayoutTrace(RoomTask task) {
		this.task = task;
	}

	Layout layout(RoomSearch.Found found) {
		RoomView view = found.view();
		List<List<List<Layout.Run>>> runs = new ArrayList<>();
		for (int wall = 0; wall < task.walls().size(); wall++) {
			List<List<Layout.Run>> tiers = new ArrayList<>();
			view.bands(wall).forEach(band -> tiers.add(new ArrayList<>()));
			runs.add(tiers);
		}
		for (int k = 0; k < view.parts().size(); k++) {
			RoomView.Part part = view.parts().get(k);
			trace(view, part, new FrameTable(part.graph(), found.window()).way(found.wallFrames()[k]), runs.get(part.wall()));
		}
		List<List<Layout.Filled>> walls = new ArrayList<>();
		for (int wall = 0; wall < runs.size(); wall++) {
			List<Layout.Filled> tiers = new ArrayList<>();
			for (int b = 0; b < runs.get(wall).size(); b++) {
				BandView band = view.bands(wall).get(b);
				List<Layout.Run> filled = List.copyOf(runs.get(wall).get(b));
				tiers.add(new Layout.Filled(band.band(), filled, band.bays(), lost(band, filled)));
			}
			walls.add(tiers);
		}
		return new Layout(view.gap(), task.vertical(view.gap()), view.rows(), found.window(), found.score(), walls);
	}

	private static List<Layout.Lost> lost(BandView band, List<Layout.Run> runs) {
		List<Layout.Lost> lost = new ArrayList<>();
		band.lostAnchors().forEach(cut -> lost.add(new Layout.Lost(cut.x0(), cut.x1(), false)));
		for (Cut cut : band.cuts()) {
			if (cut.isAnchor() && runs.stream().noneMatch(run -> run.anchor() && run.x0() == cut.x0())) {
				lost.add(new Layout.Lost(cut.x0(), cut.x1(), true));
			}
		}
		return lost;
	}

	private static void trace(RoomView view, RoomView.Part part, List<FrameTable.Taken> way, List<List<Layout.Run>> tiers) {
		BandView lower = view.bands(part.wall()).get(part.lower());
		BandView upper = part.upper() < 0 ? null : view.bands(part.wall()).get(part.upper());
		int wide = upper == null ? 1 : upper.cuts().size();
		for (FrameTable.Taken taken : way) {
			int from = taken.step().from() / 2;
			int to = taken.step().to() / 2;
			if (from / wide != to / wide) {
				add(lower, from / wide, to / wide, taken.choice().lower(), tiers.get(part.lower()));
			}
			if (from % wide != to % wide) {
				add(upper, from % wide, to % wide, taken.choice().upper(), tiers.get(part.upper()));
			}
		}
	}

	private static void add(BandView band, int from, int to, int count, List<Layout.Run> runs) {
		Cut before = band.cuts().get(from);
		Cut after = band.cuts().get(to);
		long x0 = before.x1();
		long x1 = Math.max(x0, after.x0());
		if (x1 > x0) {
			RunFit fit = band.fit();
			runs.add(new Layout.Run(x0, x1, false, fit.isFrameable(x0, x1), count,
					count == 0 ? List.of() : fit.members(x0, x1, count), count == 0 ? List.of() : fit.rails(x0, x1, count),
					before.element(), after.element()));
		}
		if (after.isAnchor()) {
			runs.add(new Layout.Run(after.x0(), after.x1(), true, true, 1,
					List.of(band.frames().quad(after.x0(), after.x1() - after.x0())), List.of(), -1, -1));
		}
	}
}
