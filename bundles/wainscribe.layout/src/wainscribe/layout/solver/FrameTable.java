// SPDX-License-Identifier: EPL-2.0
package wainscribe.layout.solver;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * For one wall graph and one place of the module: the least cost of every number of frames, from every state to the end.
 * <p>
 * Cost is compared by rank, then by the exact distance to the module. Because the number of frames is kept apart, nothing is
 * lost to the rounding of the distance.
 */
final class FrameTable {

	private final WallGraph graph;
	private final long window;
	private final long[][] ranks;
	private final long[][] excesses;

	/** Fills the table from the end of the wall to its start. */
	FrameTable(WallGraph graph, long window) {
		this.graph = graph;
		this.window = window;
		ranks = new long[graph.states()][];
		excesses = new long[graph.states()][];
		reserve();
		List<Transition> steps = graph.transitions();
		for (int i = steps.size() - 1; i >= 0; i--) {
			Transition step = steps.get(i);
			if (ranks[step.to()] != null && ranks[step.from()] != null) {
				for (Choice choice : step.choices()) {
					enter(step, choice);
				}
			}
		}
	}

	private void reserve() {
		int[] most = new int[graph.states()];
		Arrays.fill(most, -1);
		most[graph.states() - 1] = 0;
		List<Transition> steps = graph.transitions();
		for (int i = steps.size() - 1; i >= 0; i--) {
			Transition step = steps.get(i);
			if (most[step.to()] >= 0) {
				int widest = step.choices().stream().mapToInt(Choice::frames).max().orElse(0);
				most[step.from()] = Math.max(most[step.from()], most[step.to()] + step.frames() + widest);
			}
		}
		for (int state = 0; state < most.length; state++) {
			if (most[state] >= 0) {
				ranks[state] = new long[most[state] + 1];
				excesses[state] = new long[most[state] + 1];
				Arrays.fill(ranks[state], Rank.NONE);
			}
		}
		ranks[graph.states() - 1][0] = 0;
	}

	private void enter(Transition step, Choice choice) {
		long[] fromRanks = ranks[step.from()];
		long[] fromExcesses = excesses[step.from()];
		long[] toRanks = ranks[step.to()];
		int added = step.frames() + choice.frames();
		long rank = rank(step, choice);
		long excess = excess(choice);
		for (int f = 0; f < toRanks.length; f++) {
			if (toRanks[f] < Rank.NONE) {
				long sum = toRanks[f] + rank;
				long distance = excesses[step.to()][f] + excess;
				int at = f + added;
				if (sum < fromRanks[at] || sum == fromRanks[at] && distance < fromExcesses[at]) {
					fromRanks[at] = sum;
					fromExcesses[at] = distance;
				}
			}
		}
	}

	private long rank(Transition step, Choice choice) {
		return step.rank() + choice.rank() + Module.outside(choice.widths(), window) * Rank.OFF_MODULE;
	}

	private long excess(Choice choice) {
		long sum = 0;
		for (long width : choice.widths()) {
			sum += Module.distance(width, window);
		}
		return sum;
	}

	/** Returns the most frames the wall can have. */
	int most() {
		return ranks[0].length - 1;
	}

	/** Returns the least rank with exactly this many frames, {@link Rank#NONE} if there is no such way. */
	long rank(int frames) {
		return ranks[0][frames];
	}

	/** Returns the distance to the module that goes with {@link #rank(int)}. */
	long excess(int frames) {
		return excesses[0][frames];
	}

	/** A step taken, with the number of frames chosen. */
	record Taken(Transition step, Choice choice) {
	}

	/** Returns the way with this many frames that costs least; of equal ones the one with fewer frames further left. */
	List<Taken> way(int frames) {
		List<Taken> way = new ArrayList<>();
		int state = 0;
		int left = frames;
		while (state != graph.states() - 1) {
			Taken taken = next(state, left);
			way.add(taken);
			state = taken.step().to();
			left -= taken.step().frames() + taken.choice().frames();
		}
		return way;
	}

	private Taken next(int state, int left) {
		Taken best = null;
		for (Transition step : graph.transitions()) {
			if (step.from() == state && ranks[step.to()] != null) {
				for (Choice choice : step.choices()) {
					int rest = left - step.frames() - choice.frames();
					if (rest >= 0 && rest < ranks[step.to()].length
							&& ranks[step.to()][rest] + rank(step, choice) == ranks[state][left]
							&& excesses[step.to()][rest] + excess(choice) == excesses[state][left]
							&& (best == null || isFewer(choice, best.choice()))) {
						best = new Taken(step, choice);
					}
				}
			}
		}
		return best;
	}

	private static boolean isFewer(Choice choice, Choice other) {
		return choice.lower() != other.lower() ? choice.lower() < other.lower() : choice.upper() < other.upper();
	}
}
