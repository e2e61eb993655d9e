// SPDX-License-Identifier: EPL-2.0
package wainscribe.layout.solver;

import java.util.ArrayList;
import java.util.List;

/** Builds the graph of one tier, or of two tiers whose runs match. */
final class WallGraphBuilder {

	private final TierSteps lower;
	private final TierSteps upper;
	private final List<Transition> transitions = new ArrayList<>();
	private boolean[] reached;

	/**
	 * Creates a builder.
	 *
	 * @param lower steps of the lower, or only, tier
	 * @param upper steps of the upper tier; {@link TierSteps#none()} for a single one
	 */
	WallGraphBuilder(TierSteps lower, TierSteps upper) {
		this.lower = lower;
		this.upper = upper;
	}

	/** Builds the graph. */
	WallGraph build() {
		reached = new boolean[state(lower.last(), upper.last(), true) + 1];
		reached[state(0, 0, false)] = true;
		for (int i = 0; i <= lower.last(); i++) {
			for (int j = 0; j <= upper.last(); j++) {
				if (reached[state(i, j, false)]) {
					stepFrom(i, j);
				}
				if (reached[state(i, j, true)]) {
					upperSteps(i, j, true);
				}
			}
		}
		return new WallGraph(state(lower.last(), upper.last(), false) + 1, transitions);
	}

	/** A tied state stands after a run of the lower tier that started where the upper tier still is. */
	private int state(int i, int j, boolean tied) {
		return (i * (upper.last() + 1) + j) * 2 + (tied ? 1 : 0);
	}

	private void stepFrom(int i, int j) {
		if (i == lower.last() && j == upper.last()) {
			return;
		}
		if (i == lower.last()) {
			upperSteps(i, j, false);
		} else if (j == upper.last() || lower.position(i) < upper.position(j)) {
			lowerSteps(i, j, false);
		} else if (lower.position(i) > upper.position(j)) {
			upperSteps(i, j, false);
		} else {
			lowerSteps(i, j, true);
			joinedSteps(i, j);
		}
	}

	private void lowerSteps(int i, int j, boolean tied) {
		for (TierSteps.Step step : lower.from(i)) {
			add(state(i, j, false), state(step.to(), j, tied), step.rank(), step.frames(), step.choices());
		}
	}

	private void upperSteps(int i, int j, boolean tied) {
		for (TierSteps.Step step : upper.from(j)) {
			if (!tied || step.end() <= upper.position(j) || step.end() != Math.max(upper.position(j), lower.end(i))) {
				add(state(i, j, tied), state(i, step.to(), false), step.rank(), step.frames(), step.choices());
			}
		}
	}

	private void joinedSteps(int i, int j) {
		for (TierSteps.Step below : lower.from(i)) {
			for (TierSteps.Step above : upper.from(j)) {
				if (below.end() == above.end() && below.end() > lower.position(i)) {
					add(state(i, j, false), state(below.to(), above.to(), false), below.rank() + above.rank(),
							below.frames() + above.frames(), RunChoices.joined(below.choices(), above.choices()));
				}
			}
		}
	}

	private void add(int from, int to, long rank, int frames, List<Choice> choices) {
		reached[to] = true;
		transitions.add(new Transition(from, to, rank, frames, choices));
	}
}
