// SPDX-License-Identifier: EPL-2.0
package wainscribe.layout.solver;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.LongStream;

/**
 * A room at one gap: the graphs of its walls and what is the same in every layout at that gap.
 */
final class RoomView {

	/**
	 * A graph and where it belongs.
	 *
	 * @param wall  number of the wall
	 * @param lower number of the lower, or only, tier
	 * @param upper number of the upper tier, -1 for none
	 * @param graph the graph
	 */
	record Part(int wall, int lower, int upper, WallGraph graph) {
	}

	private final RoomTask task;
	private final long gap;
	private final int rows;
	private final List<List<BandView>> bands;
	private final List<Part> parts;
	private final long fixedRank;
	private final int fixedFrames;

	private RoomView(RoomTask task, long gap, int rows, List<List<BandView>> bands, List<Part> parts, long fixedRank, int fixedFrames) {
		this.task = task;
		this.gap = gap;
		this.rows = rows;
		this.bands = bands;
		this.parts = parts;
		this.fixedRank = fixedRank;
		this.fixedFrames = fixedFrames;
	}

	/** Looks at a room. */
	static RoomView of(RoomTask task, long gap, int rows, boolean withSplits) {
		List<List<BandView>> bands = new ArrayList<>();
		List<Part> parts = new ArrayList<>();
		long rank = 0;
		int frames = 0;
		for (int w = 0; w < task.walls().size(); w++) {
			WallTask wall = task.walls().get(w);
			List<BandView> views = wall.bands().stream().map(band -> BandView.of(task, wall, band, gap, rows, withSplits)).toList();
			bands.add(views);
			for (BandView view : views) {
				rank += fixedRank(view);
				frames += view.band().placed().size() + (int) view.bays().stream().filter(Bay::legal).count();
			}
			addParts(parts, w, views, gap);
		}
		return new RoomView(task, gap, rows, bands, parts, rank, frames);
	}

	private static long fixedRank(BandView view) {
		long rank = view.lostAnchors().size() * Rank.ANCHOR;
		for (Bay bay : view.bays()) {
			rank += bay.legal() ? bay.near() * Rank.NEAR : Rank.ANCHOR;
		}
		for (Quad frame : view.band().placed()) {
			rank += view.frames().nearOf(frame) * Rank.NEAR;
		}
		return rank;
	}

	private static void addParts(List<Part> parts, int wall, List<BandView> views, long gap) {
		int first = 0;
		if (views.size() > 1 && !views.get(1).band().isPart() && !views.get(0).cuts().isEmpty() && !views.get(1).cuts().isEmpty()) {
			parts.add(new Part(wall, 0, 1, new WallGraphBuilder(new TierSteps(views.get(0), gap, false),
					new TierSteps(views.get(1), gap, true)).build()));
			first = 2;
		}
		for (int b = first; b < views.size(); b++) {
			if (!views.get(b).cuts().isEmpty()) {
				parts.add(new Part(wall, b, -1,
						new WallGraphBuilder(new TierSteps(views.get(b), gap, false), TierSteps.none()).build()));
			}
		}
	}

	/** Returns the room with only those ways that cost least in the first five terms. */
	RoomView pruned() {
		return new RoomView(task, gap, rows, bands, parts.stream()
				.map(part -> new Part(part.wall(), part.lower(), part.upper(), part.graph().pruned())).toList(), fixedRank,
				fixedFrames);
	}

	/** Returns the least cost in the first five terms. */
	long leastRank() {
		return fixedRank + parts.stream().mapToLong(part -> part.graph().leastRank()).sum();
	}

	long gap() {
		return gap;
	}

	/** Returns the rows of fields; 1 for frames. */
	int rows() {
		return rows;
	}

	/** Returns the tiers of a wall. */
	List<BandView> bands(int wall) {
		return bands.get(wall);
	}

	List<Part> parts() {
		return parts;
	}

	/** Returns the cost of bays, lost anchors and placed frames. */
	long fixedRank() {
		return fixedRank;
	}

	/** Returns the number of bays and placed frames. */
	int fixedFrames() {
		return fixedFrames;
	}

	/** Returns the places of the module worth trying: round the width that was asked for, else wherever it may serve best. */
	long[] windows() {
		if (task.strips() != null && task.strips().aim() >= 0) {
			return new long[] { Module.around(task.strips().aim()) };
		}
		return Module.windows(parts.stream().map(part -> part.graph().widths()).reduce(LongStream.empty(), LongStream::concat));
	}
}
