// SPDX-License-Identifier: EPL-2.0
package wainscribe.cutting.solver;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Tries all ways to fill given bars: the longest piece still open gets a pattern on each bar type in turn, and so on (bin
 * completion: Martello and Toth 1990; Korf 2003). Each dual cut is a budget of what may be wasted in its values, and a branch ends
 * when one is overdrawn. States found hopeless once are remembered.
 */
final class PatternSearch {

	private static final int MOST_STATES = 400_000;

	/** What a search ended with. */
	enum End {
		/** All pieces have their place. */
		FOUND,
		/** They can't have. */
		IMPOSSIBLE,
		/** The limit was reached first. */
		CUT_SHORT
	}

	private record State(int[] open, int[] left) {

		@Override
		public boolean equals(Object other) {
			return other instanceof State state && Arrays.equals(open, state.open) && Arrays.equals(left, state.left);
		}

		@Override
		public int hashCode() {
			return 31 * Arrays.hashCode(open) + Arrays.hashCode(left);
		}
	}

	private final CuttingTask task;
	private final SearchLimit limit;
	private final List<DualCut> cuts;
	private final Set<State> hopeless = new HashSet<>();
	private final List<Pattern> chosen = new ArrayList<>();
	private final int[] open;
	private final int[] left;

	/**
	 * Prepares a search.
	 *
	 * @param task  items, and bars of which there are as many as their limits say
	 * @param cuts  cuts that hold for the task
	 * @param limit where to stop; a step is a pattern looked at
	 */
	PatternSearch(CuttingTask task, Collection<DualCut> cuts, SearchLimit limit) {
		this.task = task;
		this.limit = limit;
		this.cuts = new ArrayList<>(cuts);
		open = task.demands();
		left = task.limits();
	}

	End run() {
		long[] slacks = cuts.stream().mapToLong(cut -> cut.slack(left)).toArray();
		return Arrays.stream(slacks).anyMatch(slack -> slack < 0) ? End.IMPOSSIBLE : search(slacks);
	}

	/** Returns the packing found. */
	Optional<Packing> packing() {
		Packing packing = new Packing(task);
		chosen.forEach(pattern -> packing.cut(pattern, 1));
		return packing.isComplete() ? Optional.of(packing) : Optional.empty();
	}

	private End search(long[] slacks) {
		int item = 0;
		while (item < open.length && open[item] == 0) {
			item++;
		}
		if (item == open.length) {
			return End.FOUND;
		}
		State state = new State(open.clone(), left.clone());
		if (hopeless.contains(state)) {
			return End.IMPOSSIBLE;
		}
		for (Choice choice : choices(item, slacks)) {
			apply(choice.pattern, -1);
			chosen.add(choice.pattern);
			End end = search(choice.slacks);
			if (end == End.FOUND) {
				return end;
			}
			chosen.removeLast();
			apply(choice.pattern, 1);
			if (end == End.CUT_SHORT) {
				return end;
			}
		}
		if (limit.isReached()) {
			return End.CUT_SHORT;
		}
		if (hopeless.size() < MOST_STATES) {
			hopeless.add(state);
		}
		return End.IMPOSSIBLE;
	}

	private void apply(Pattern pattern, int sign) {
		int[] counts = pattern.counts();
		for (int i = 0; i < counts.length; i++) {
			open[i] += sign * counts[i];
		}
		left[pattern.bar()] += sign;
	}

	private record Choice(Pattern pattern, long[] slacks, double waste) {
	}

	private List<Choice> choices(int item, long[] slacks) {
		List<Choice> choices = new ArrayList<>();
		for (int k = 0; k < left.length; k++) {
			long capacity = task.bars().get(k).capacity();
			if (left[k] > 0 && capacity >= task.weight(item) && !hasTwinBefore(k)) {
				int[] counts = new int[open.length];
				counts[item] = 1;
				fill(choices, slacks, k, counts, item, item, capacity - task.weight(item), smallerCapacity(k));
			}
		}
		choices.sort(Comparator.comparingDouble(Choice::waste));
		return choices;
	}

	/** Of bar types of one capacity the first is filled first. */
	private boolean hasTwinBefore(int bar) {
		for (int k = 0; k < bar; k++) {
			if (left[k] > 0 && task.bars().get(k).capacity() == task.bars().get(bar).capacity()) {
				return true;
			}
		}
		return false;
	}

	/** What fits the next smaller bar is cut from that: the two bars could be changed for each other. */
	private long smallerCapacity(int bar) {
		long capacity = task.bars().get(bar).capacity();
		long smaller = 0;
		for (int k = 0; k < left.length; k++) {
			long other = task.bars().get(k).capacity();
			smaller = left[k] > 0 && other < capacity ? Math.max(smaller, other) : smaller;
		}
		return smaller;
	}

	private void fill(List<Choice> choices, long[] slacks, int bar, int[] counts, int first, int item, long room, long above) {
		if (limit.isReached()) {
			return;
		}
		int next = item;
		while (next < open.length && (open[next] == counts[next] || task.weight(next) > room)) {
			next++;
		}
		if (next == open.length) {
			limit.spend(1);
			take(choices, slacks, new Pattern(bar, counts), first, room, above);
			return;
		}
		int most = (int) Math.min(open[next] - counts[next], room / task.weight(next));
		int before = counts[next];
		for (int more = most; more >= 0; more--) {
			counts[next] = before + more;
			fill(choices, slacks, bar, counts, first, next + 1, room - more * task.weight(next), above);
		}
		counts[next] = before;
	}

	private void take(List<Choice> choices, long[] slacks, Pattern pattern, int first, long room, long above) {
		if (task.bars().get(pattern.bar()).capacity() - room <= above || isDominated(pattern.counts(), first, room)) {
			return;
		}
		long[] rest = new long[slacks.length];
		double waste = 0;
		for (int c = 0; c < slacks.length; c++) {
			DualCut cut = cuts.get(c);
			rest[c] = slacks[c] - cut.worths()[pattern.bar()] + value(cut.values(), pattern.counts());
			if (rest[c] < 0) {
				return;
			}
			waste = Math.max(waste, (double) (slacks[c] - rest[c]) / (slacks[c] + 1));
		}
		choices.add(new Choice(new Pattern(pattern.bar(), pattern.counts().clone()), rest, waste));
	}

	private static long value(long[] values, int[] counts) {
		long sum = 0;
		for (int i = 0; i < counts.length; i++) {
			sum += values[i] * counts[i];
		}
		return sum;
	}

	/** Whether a piece could be added, or one but the first be changed for a longer one: then that pattern is at least as good. */
	private boolean isDominated(int[] counts, int first, long room) {
		int longer = -1;
		for (int i = first; i < counts.length; i++) {
			if (counts[i] > (i == first ? 1 : 0) && longer >= 0 && task.weight(longer) - task.weight(i) <= room) {
				return true;
			}
			if (open[i] > counts[i]) {
				if (task.weight(i) <= room) {
					return true;
				}
				longer = i;
			}
		}
		return false;
	}
}
