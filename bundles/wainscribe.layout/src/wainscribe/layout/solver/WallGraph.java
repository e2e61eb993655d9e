// SPDX-License-Identifier: EPL-2.0
package wainscribe.layout.solver;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.LongStream;

/**
 * All ways to part one or two tiers of a wall into runs and to fill these, as steps between states.
 * <p>
 * A state says at which cut each tier has arrived. The tier that is behind goes on first, so that two runs with the same ends
 * always start from one state and can be chosen together. States are numbered so that every step leads to a higher number.
 */
final class WallGraph {

	private final int states;
	private final List<Transition> transitions;

	WallGraph(int states, List<Transition> transitions) {
		this.states = states;
		this.transitions = List.copyOf(transitions);
	}

	/** Returns the number of states; the first is 0 and the last is one less. */
	int states() {
		return states;
	}

	/** Returns all steps, ordered by the state they start from. */
	List<Transition> transitions() {
		return transitions;
	}

	/** Returns all widths that have a say in the module. */
	LongStream widths() {
		return transitions.stream().flatMap(step -> step.choices().stream()).flatMapToLong(choice -> Arrays.stream(choice.widths()));
	}

	/** Returns the least cost in the first five terms. */
	long leastRank() {
		return fromStart()[states - 1];
	}

	/** Returns the graph of those ways only that cost least in the first five terms. */
	WallGraph pruned() {
		long[] start = fromStart();
		long[] end = toEnd();
		long least = start[states - 1];
		List<Transition> kept = new ArrayList<>();
		for (Transition step : transitions) {
			List<Choice> choices = step.choices().stream()
					.filter(choice -> start[step.from()] + step.rank() + choice.rank() + end[step.to()] == least).toList();
			if (!choices.isEmpty()) {
				kept.add(new Transition(step.from(), step.to(), step.rank(), step.frames(), choices));
			}
		}
		return new WallGraph(states, kept);
	}

	private long[] fromStart() {
		long[] least = unreached();
		least[0] = 0;
		for (Transition step : transitions) {
			for (Choice choice : step.choices()) {
				least[step.to()] = Math.min(least[step.to()], least[step.from()] + step.rank() + choice.rank());
			}
		}
		return least;
	}

	private long[] toEnd() {
		long[] least = unreached();
		least[states - 1] = 0;
		for (int i = transitions.size() - 1; i >= 0; i--) {
			Transition step = transitions.get(i);
			for (Choice choice : step.choices()) {
				least[step.from()] = Math.min(least[step.from()], least[step.to()] + step.rank() + choice.rank());
			}
		}
		return least;
	}

	private long[] unreached() {
		long[] least = new long[states];
		Arrays.fill(least, Rank.NONE);
		return least;
	}
}
