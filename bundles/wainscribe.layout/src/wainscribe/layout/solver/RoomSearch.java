// SPDX-License-Identifier: EPL-2.0
package wainscribe.layout.solver;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Searches the layouts of a room at one gap for the best whose number of frames lies in a range. */
final class RoomSearch {

	/**
	 * What was found.
	 *
	 * @param view       the room at its gap
	 * @param window     place of the module
	 * @param score      the terms
	 * @param wallFrames frames of each part of the room, in walking order
	 */
	record Found(RoomView view, long window, Score score, int[] wallFrames) {

		/** Tells whether this is better, or equally good with fewer frames on an earlier wall. */
		boolean isBetterThan(Found other) {
			if (other == null) {
				return true;
			}
			int byScore = score.compareTo(other.score);
			return byScore != 0 ? byScore < 0 : Arrays.compare(wallFrames, other.wallFrames) < 0;
		}
	}

	private final RoomView view;
	private final List<WallGraph> graphs;
	private final long shift;

	RoomSearch(RoomView view, long defaultGap) {
		this.view = view;
		graphs = view.parts().stream().map(RoomView.Part::graph).toList();
		shift = Math.abs(view.gap() - defaultGap);
	}

	/**
	 * Finds the best layout.
	 *
	 * @param least     least number of frames
	 * @param most      greatest number of frames
	 * @param incumbent the best known, or null; kept unless a better one is found
	 */
	Found best(int least, int most, Found incumbent) {
		Found best = incumbent;
		for (long window : view.windows()) {
			if (best == null || mayBeat(window, best.score())) {
				Found found = at(window, least, most);
				if (found != null && found.isBetterThan(best)) {
					best = found;
				}
			}
		}
		return best;
	}

	private boolean mayBeat(long window, Score best) {
		long rank = view.fixedRank();
		long excess = 0;
		for (WallGraph graph : graphs) {
			long[] bound = bound(graph, window);
			rank += bound[0];
			excess += bound[1];
		}
		return new Score(rank, Module.tenths(excess), 0, 0).compareTo(new Score(best.rank(), best.tenths(), 1, 0)) < 0;
	}

	/** Returns the least rank of a graph, and the least distance to the module that goes with it. */
	private static long[] bound(WallGraph graph, long window) {
		long[] ranks = new long[graph.states()];
		long[] excesses = new long[graph.states()];
		Arrays.fill(ranks, Rank.NONE);
		ranks[0] = 0;
		for (Transition step : graph.transitions()) {
			if (ranks[step.from()] < Rank.NONE) {
				for (Choice choice : step.choices()) {
					long rank = ranks[step.from()] + step.rank() + choice.rank();
					long excess = excesses[step.from()];
					for (long width : choice.widths()) {
						long distance = Module.distance(width, window);
						rank += distance > 0 ? Rank.OFF_MODULE : 0;
						excess += distance;
					}
					if (rank < ranks[step.to()] || rank == ranks[step.to()] && excess < excesses[step.to()]) {
						ranks[step.to()] = rank;
						excesses[step.to()] = excess;
					}
				}
			}
		}
		return new long[] { ranks[graph.states() - 1], excesses[graph.states() - 1] };
	}

	private Found at(long window, int least, int most) {
		List<FrameTable> tables = graphs.stream().map(graph -> new FrameTable(graph, window)).toList();
		List<long[]> ranks = new ArrayList<>();
		List<long[]> excesses = new ArrayList<>();
		join(tables, ranks, excesses);
		Score best = null;
		int chosen = -1;
		long[] all = ranks.get(0);
		int to = (int) Math.min(all.length - 1L, (long) most - view.fixedFrames());
		for (int f = Math.max(0, least - view.fixedFrames()); f <= to; f++) {
			if (all[f] < Rank.NONE) {
				Score score = new Score(view.fixedRank() + all[f], Module.tenths(excesses.get(0)[f]), f + view.fixedFrames(), shift);
				if (best == null || score.compareTo(best) < 0) {
					best = score;
					chosen = f;
				}
			}
		}
		return best == null ? null : new Found(view, window, best, share(tables, ranks, excesses, chosen));
	}

	/** Joins the tables of the walls from the last to the first: entry k is the least cost of walls k and after. */
	private static void join(List<FrameTable> tables, List<long[]> ranks, List<long[]> excesses) {
		ranks.add(new long[1]);
		excesses.add(new long[1]);
		for (int k = tables.size() - 1; k >= 0; k--) {
			FrameTable table = tables.get(k);
			long[] restRanks = ranks.get(0);
			long[] restExcesses = excesses.get(0);
			long[] sumRanks = new long[restRanks.length + table.most()];
			long[] sumExcesses = new long[sumRanks.length];
			Arrays.fill(sumRanks, Rank.NONE);
			for (int a = 0; a <= table.most(); a++) {
				for (int b = 0; table.rank(a) < Rank.NONE && b < restRanks.length; b++) {
					long rank = table.rank(a) + restRanks[b];
					long excess = table.excess(a) + restExcesses[b];
					if (rank < Rank.NONE
							&& (rank < sumRanks[a + b] || rank == sumRanks[a + b] && excess < sumExcesses[a + b])) {
						sumRanks[a + b] = rank;
						sumExcesses[a + b] = excess;
					}
				}
			}
			ranks.add(0, sumRanks);
			excesses.add(0, sumExcesses);
		}
	}

	/** Shares frames out to the walls, as few as possible to the earlier ones. */
	private static int[] share(List<FrameTable> tables, List<long[]> ranks, List<long[]> excesses, int frames) {
		int[] shares = new int[tables.size()];
		int left = frames;
		for (int k = 0; k < shares.length; k++) {
			FrameTable table = tables.get(k);
			int share = 0;
			while (!isShare(table, share, ranks.get(k)[left], excesses.get(k)[left], left - share, ranks.get(k + 1), excesses.get(k + 1))) {
				share++;
			}
			shares[k] = share;
			left -= share;
		}
		return shares;
	}

	private static boolean isShare(FrameTable table, int share, long rank, long excess, int rest, long[] restRanks,
			long[] restExcesses) {
		return table.rank(share) < Rank.NONE && rest < restRanks.length && table.rank(share) + restRanks[rest] == rank
				&& table.excess(share) + restExcesses[rest] == excess;
	}
}
