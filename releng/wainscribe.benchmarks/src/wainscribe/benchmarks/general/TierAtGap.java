// SPDX-License-Identifier: EPL-2.0
package wainscribe.benchmarks.general;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

import wainscribe.layout.solver.Band;
import wainscribe.layout.solver.Barrier;
import wainscribe.layout.solver.Box;
import wainscribe.layout.solver.Island;
import wainscribe.layout.solver.RoomTask;
import wainscribe.layout.solver.WallTask;

/**
 * A level tier of a wall at one gap, worked out from the definition of the layout problem: the ways to part it, and which
 * numbers of frames are legal in a run and what they cost. All of it is handed to the general solver ready made. Shares only
 * the statement of the problem with the layout solver.
 */
final class TierAtGap {

	private final RoomTask task;
	private final WallTask wall;
	private final long gap;
	private final FrameLegality legality;
	private final long bottom;
	private final long top;
	private final Band band;
	private final List<Box> blockers;
	private final int[] fixed = new int[5];
	private int fixedFrames;

	TierAtGap(RoomTask task, WallTask wall, Band band, long gap) {
		if (!band.isLevel() || !band.placed().isEmpty()) {
			throw new IllegalArgumentException("expected a level tier without placed frames");
		}
		this.task = task;
		this.wall = wall;
		this.band = band;
		this.gap = gap;
		bottom = band.bottom().start();
		top = band.top().start();
		legality = new FrameLegality(task.limits(), wall.islands(), bottom, top, gap, task.vertical(gap));
		blockers = wall.barriers().stream().map(barrier -> barrier.blocked(gap, task.vertical(gap))).filter(this::isReached).toList();
		addBays();
	}

	private boolean isReached(Box box) {
		return box.y0() < top && box.y1() > bottom && box.x0() < band.x1() && box.x1() > band.x0();
	}

	FrameLegality legality() {
		return legality;
	}

	/** Returns every way to keep or drop anchors and, if wanted, to make islands blockers. */
	List<Parting> partings(boolean withSplits) {
		List<long[]> anchors = new ArrayList<>();
		int[] lost = fixed.clone();
		for (long[] anchor : anchors()) {
			if (legality.near(anchor[0], anchor[1]) < 0) {
				lost[2]++;
			} else {
				anchors.add(anchor);
			}
		}
		List<long[]> whole = runs(blockers, List.of());
		List<Box> islands = !withSplits ? List.of() : wall.islands().stream().map(Island::outline).filter(this::isReached)
				.filter(box -> whole.stream().anyMatch(run -> box.x0() < run[1] && box.x1() > run[0])).toList();
		List<Parting> partings = new ArrayList<>();
		for (int kept = 0; kept < 1 << anchors.size(); kept++) {
			for (int split = 0; split < 1 << islands.size(); split++) {
				List<long[]> stay = chosen(anchors, kept);
				List<Box> parts = chosen(islands, split);
				if (areApart(stay, parts)) {
					int[] terms = lost.clone();
					terms[1] += parts.size();
					terms[2] += anchors.size() - stay.size();
					stay.forEach(anchor -> terms[3] += legality.near(anchor[0], anchor[1]));
					List<Box> cuts = new ArrayList<>(blockers);
					cuts.addAll(parts);
					partings.add(new Parting(terms, fixedFrames + stay.size(), runs(cuts, stay)));
				}
			}
		}
		return partings;
	}

	private static <T> List<T> chosen(List<T> all, int bits) {
		List<T> some = new ArrayList<>();
		for (int i = 0; i < all.size(); i++) {
			if ((bits & 1 << i) != 0) {
				some.add(all.get(i));
			}
		}
		return some;
	}

	private boolean areApart(List<long[]> anchors, List<Box> parts) {
		return anchors.stream().noneMatch(
				anchor -> parts.stream().anyMatch(box -> box.x0() - anchor[1] < gap && anchor[0] - box.x1() < gap));
	}

	private List<long[]> runs(List<Box> cuts, List<long[]> anchors) {
		List<long[]> all = new ArrayList<>(anchors);
		cuts.forEach(box -> all.add(new long[] { box.x0(), box.x1() }));
		all.sort(Comparator.comparingLong(cut -> cut[0]));
		List<long[]> runs = new ArrayList<>();
		long x = band.x0();
		for (long[] cut : all) {
			if (cut[0] > x) {
				runs.add(new long[] { x, Math.min(cut[0], band.x1()) });
			}
			x = Math.max(x, cut[1]);
		}
		if (x < band.x1()) {
			runs.add(new long[] { x, band.x1() });
		}
		return runs;
	}

	private List<long[]> anchors() {
		if (!band.underWindows()) {
			return List.of();
		}
		List<long[]> spans = new ArrayList<>();
		wall.barriers().stream().filter(barrier -> barrier.kind() == Barrier.Kind.WINDOW).map(Barrier::outline)
				.filter(box -> box.y0() >= top && box.x0() < band.x1() && box.x1() > band.x0())
				.sorted(Comparator.comparingLong(Box::x0)).forEach(box -> join(spans, box.x0(), box.x1()));
		List<long[]> whole = runs(blockers, List.of());
		return spans.stream().filter(span -> span[1] - span[0] >= task.limits().least())
				.filter(span -> whole.stream().anyMatch(run -> span[0] - run[0] >= gap && run[1] - span[1] >= gap)).toList();
	}

	private void join(List<long[]> spans, long x0, long x1) {
		if (!spans.isEmpty() && x0 - spans.getLast()[1] < gap) {
			spans.getLast()[1] = Math.max(spans.getLast()[1], x1);
		} else {
			spans.add(new long[] { x0, x1 });
		}
	}

	private void addBays() {
		List<Barrier> openings = wall.barriers().stream().filter(Barrier::isOpening).filter(barrier -> isReached(barrier.outline()))
				.sorted(Comparator.comparingLong(barrier -> barrier.outline().x0())).toList();
		List<List<Barrier>> groups = new ArrayList<>();
		long right = 0;
		for (Barrier opening : openings) {
			if (groups.isEmpty() || opening.outline().x0() - right >= gap) {
				groups.add(new ArrayList<>());
				right = opening.outline().x1();
			}
			groups.getLast().add(opening);
			right = Math.max(right, opening.outline().x1());
		}
		for (List<Barrier> group : groups) {
			long x0 = group.stream().mapToLong(barrier -> barrier.outline().x0()).min().orElseThrow();
			long x1 = group.stream().mapToLong(barrier -> barrier.outline().x1()).max().orElseThrow();
			long low = group.stream().mapToLong(barrier -> barrier.outline().y0()).min().orElseThrow();
			long high = group.stream().mapToLong(barrier -> barrier.outline().y1()).max().orElseThrow();
			long v = task.vertical(gap);
			addBay(group, new Box(x0, bottom + v, x1, low - v));
			addBay(group, new Box(x0, high + v, x1, top - v));
		}
	}

	private void addBay(List<Barrier> group, Box frame) {
		long least = task.limits().least();
		if (frame.y1() - frame.y0() < least || frame.x1() - frame.x0() < least || frame.x0() < band.x0() + gap
				|| frame.x1() > band.x1() - gap) {
			return;
		}
		long v = task.vertical(gap);
		Box zone = new Box(frame.x0() - gap, frame.y0() - v, frame.x1() + gap, frame.y1() + v);
		if (wall.barriers().stream().filter(barrier -> !group.contains(barrier))
				.anyMatch(barrier -> barrier.blocked(gap, v).overlaps(zone))) {
			return;
		}
		int near = legality.near(frame);
		if (near < 0) {
			fixed[2]++;
		} else {
			fixed[3] += near;
			fixedFrames++;
		}
	}
}
