// SPDX-License-Identifier: EPL-2.0
package wainscribe.layout.solver;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * A tier of a wall at one gap: what cuts it, its bays, and the fit of frames in its runs.
 * <p>
 * The first and the last cut are the ends of the tier. Cuts are sorted from left to right; between two blocked ones anchors
 * and splits may be chosen.
 */
final class BandView {

	private final Band band;
	private final RunFit fit;
	private final FrameFit frames;
	private final List<Cut> cuts;
	private final List<Bay> bays;
	private final List<Cut> lostAnchors;

	private BandView(Band band, RunFit fit, FrameFit frames, List<Cut> cuts, List<Bay> bays, List<Cut> lostAnchors) {
		this.band = band;
		this.fit = fit;
		this.frames = frames;
		this.cuts = cuts;
		this.bays = bays;
		this.lostAnchors = lostAnchors;
	}

	/**
	 * Looks at a band.
	 *
	 * @param rows       rows of fields, 1 for frames
	 * @param withSplits whether islands may be made barriers
	 */
	static BandView of(RoomTask room, WallTask wall, Band band, long gap, int rows, boolean withSplits) {
		long gapY = room.vertical(gap);
		FrameFit frames = new FrameFit(room.limits(), wall.islands(), band.bottom(), band.top(), gap, gapY);
		RunFit fit = room.strips() == null ? frames : room.fit(wall, band, gap, rows);
		Band seen = framedPart(band, room.limits().least(), gapY);
		if (!band.placed().isEmpty() || seen.x0() >= seen.x1()) {
			return new BandView(seen, fit, frames, List.of(), List.of(), List.of());
		}
		List<Cut> cuts = new ArrayList<>(blocked(wall, seen, gap, gapY));
		List<Cut> anchors = seen.underWindows() ? new Anchors(room.limits(), frames, gap).find(wall, seen, cuts) : List.of();
		List<Cut> splits = withSplits && !band.isPart() ? splits(wall, seen, cuts, room.strips() != null && room.strips().boardsAtEnds()) : List.of();
		List<Bay> bays = room.strips() == null ? new Bays(room.limits(), wall, gap, gapY).find(seen) : List.of();
		List<Cut> lost = anchors.stream().filter(anchor -> anchor.near() == RunFit.ILLEGAL).toList();
		anchors.stream().filter(anchor -> anchor.near() != RunFit.ILLEGAL).forEach(cuts::add);
		cuts.addAll(splits);
		cuts.sort(Comparator.comparingLong(Cut::x0).thenComparingLong(Cut::x1).thenComparing(Cut::kind)
				.thenComparingInt(Cut::element));
		return new BandView(seen, fit, frames, List.copyOf(cuts), bays, lost);
	}

	/**
	 * Returns the part of a band between slopes in which a frame finds its least height; a band that is nowhere high enough,
	 * or level, is left as it is, so that its runs are reported plain.
	 */
	private static Band framedPart(Band band, long least, long gapY) {
		if (band.isLevel() || band.x0() >= band.x1()) {
			return band;
		}
		long needed = least + band.bottom().plumb(gapY) + band.top().plumb(gapY);
		boolean left = band.top().at(band.x0()) - band.bottom().at(band.x0()) >= needed;
		boolean right = band.top().at(band.x1()) - band.bottom().at(band.x1()) >= needed;
		if (left == right) {
			return band;
		}
		long high = left ? band.x0() : band.x1();
		long low = left ? band.x1() : band.x0();
		while (Math.abs(high - low) > 1) {
			long middle = Math.floorDiv(high + low, 2);
			if (band.top().at(middle) - band.bottom().at(middle) >= needed) {
				high = middle;
			} else {
				low = middle;
			}
		}
		return new Band(band.bottom(), band.top(), left ? band.x0() : high, left ? high : band.x1(), band.underWindows(),
				band.placed(), band.part());
	}

	private static List<Cut> blocked(WallTask wall, Band band, long gap, long gapY) {
		List<Box> boxes = wall.barriers().stream().map(barrier -> barrier.blocked(gap, gapY)).filter(band::isReachedBy)
				.sorted(Comparator.comparingLong(Box::x0)).toList();
		List<Cut> cuts = new ArrayList<>();
		long from = band.x0();
		long to = band.x0();
		for (Box box : boxes) {
			if (box.x0() > to) {
				cuts.add(new Cut(from, to, Cut.Kind.BLOCKED, -1, 0));
				from = box.x0();
			}
			to = Math.max(to, Math.min(box.x1(), band.x1()));
		}
		if (to < band.x1() || cuts.isEmpty()) {
			cuts.add(new Cut(from, to, Cut.Kind.BLOCKED, -1, 0));
			from = band.x1();
		}
		cuts.add(new Cut(Math.max(from, cuts.get(cuts.size() - 1).x1()), band.x1(), Cut.Kind.BLOCKED, -1, 0));
		return cuts;
	}

	/** A board at the end of a run keeps the island's margin; a gap or a field does so by itself. */
	private static List<Cut> splits(WallTask wall, Band band, List<Cut> blocked, boolean boardsAtEnds) {
		List<Cut> splits = new ArrayList<>();
		for (Island island : wall.islands()) {
			Box box = island.outline();
			long lower = Math.min(band.bottom().at(box.x0()), band.bottom().at(box.x1()));
			long upper = Math.max(band.top().at(box.x0()), band.top().at(box.x1()));
			if (box.y0() < upper && box.y1() > lower) {
				addSplits(splits, island, boardsAtEnds ? Math.max(1, island.margin()) : 0, blocked);
			}
		}
		return splits;
	}

	/** An island that sticks out on both sides of a blocked part is one cut with it; else only what lies in runs counts. */
	private static void addSplits(List<Cut> splits, Island island, long margin, List<Cut> blocked) {
		Box box = island.outline();
		List<Cut> met = blocked.subList(1, blocked.size() - 1).stream()
				.filter(cut -> cut.x0() <= box.x1() && cut.x1() >= box.x0()).toList();
		if (met.stream().anyMatch(cut -> box.x0() < cut.x0() && cut.x1() < box.x1())) {
			splits.add(new Cut(Math.min(box.x0() - margin, met.get(0).x0()), Math.max(box.x1() + margin, met.get(met.size() - 1).x1()),
					Cut.Kind.SPLIT, island.element(), 0));
			return;
		}
		for (int i = 0; i + 1 < blocked.size(); i++) {
			long start = blocked.get(i).x1();
			long end = blocked.get(i + 1).x0();
			long from = Math.max(box.x0(), start);
			long to = Math.min(box.x1(), end);
			if (from < to || from == to && box.x0() == box.x1()) {
				splits.add(new Cut(Math.max(box.x0() - margin, start), Math.min(box.x1() + margin, end), Cut.Kind.SPLIT,
						island.element(), 0));
			}
		}
	}

	Band band() {
		return band;
	}

	RunFit fit() {
		return fit;
	}

	/** Returns the fit of single frames: anchors, bays and placed ones. */
	FrameFit frames() {
		return frames;
	}

	/** Returns the cuts; empty when the band takes no runs. */
	List<Cut> cuts() {
		return cuts;
	}

	List<Bay> bays() {
		return bays;
	}

	/** Returns the anchors that cannot be, whatever is chosen. */
	List<Cut> lostAnchors() {
		return lostAnchors;
	}
}
