// SPDX-License-Identifier: EPL-2.0
package wainscribe.layout.solver;

import java.util.ArrayList;
import java.util.List;

/** The steps from each cut of a tier to those that may come next, with the runs between them. */
final class TierSteps {

	private final List<Cut> cuts;
	private final long gap;
	private final RunChoices runs;
	private final List<List<Step>> steps;

	/**
	 * A step to the next chosen cut.
	 *
	 * @param to      number of that cut
	 * @param end     right end of the run before it
	 * @param rank    what the cut itself costs
	 * @param frames  anchors it sets
	 * @param choices numbers of frames for the run
	 */
	record Step(int to, long end, long rank, int frames, List<Choice> choices) {
	}

	/**
	 * Creates the steps of a tier.
	 *
	 * @param view  the tier
	 * @param upper whether its choices count as those of the upper tier
	 */
	TierSteps(BandView view, long gap, boolean upper) {
		this(view.cuts(), gap, new RunChoices(view.fit(), view.band().isPart() ? Rank.ANCHOR : Rank.PLAIN, upper));
	}

	private TierSteps(List<Cut> cuts, long gap, RunChoices runs) {
		this.cuts = cuts;
		this.gap = gap;
		this.runs = runs;
		steps = new ArrayList<>();
		for (int i = 0; i < cuts.size(); i++) {
			steps.add(null);
		}
	}

	/** Returns the steps of a tier that is not there. */
	static TierSteps none() {
		return new TierSteps(List.of(new Cut(0, 0, Cut.Kind.BLOCKED, -1, 0)), 0, null);
	}

	/** Returns the number of the last cut. */
	int last() {
		return cuts.size() - 1;
	}

	/** Returns where the next run starts after a cut. */
	long position(int cut) {
		return cuts.get(cut).x1();
	}

	/** Returns where a cut begins. */
	long end(int cut) {
		return cuts.get(cut).x0();
	}

	/** Returns the steps from a cut. */
	List<Step> from(int cut) {
		if (steps.get(cut) == null) {
			steps.set(cut, find(cut));
		}
		return steps.get(cut);
	}

	private List<Step> find(int index) {
		Cut from = cuts.get(index);
		List<Step> found = new ArrayList<>();
		int skipped = 0;
		for (int i = index + 1; i < cuts.size(); i++) {
			Cut to = cuts.get(i);
			if (isNext(from, to) && !isCovered(to, i, from)) {
				long end = Math.max(from.x1(), to.x0());
				long rank = skipped * Rank.ANCHOR + (to.isSplit() ? Rank.SPLIT : 0) + to.near() * Rank.NEAR;
				found.add(new Step(i, end, rank, to.isAnchor() ? 1 : 0, runs.of(from.x1(), end)));
			}
			if (to.isBlocked() && !isCovered(to, i, from)) {
				break;
			}
			skipped += to.isAnchor() ? 1 : 0;
		}
		return found;
	}

	/** A split may stick out on both sides of a blocked part, which then is no cut of its own. */
	private boolean isCovered(Cut blocked, int index, Cut from) {
		return from.isSplit() && blocked.isBlocked() && index < last() && blocked.x1() <= from.x1();
	}

	private boolean isNext(Cut from, Cut to) {
		if (from.isAnchor() || to.isAnchor()) {
			return to.x0() - from.x1() >= gap;
		}
		return to.isBlocked() || to.x1() > from.x1() || to.x0() == to.x1() && to.x0() >= from.x1();
	}
}
