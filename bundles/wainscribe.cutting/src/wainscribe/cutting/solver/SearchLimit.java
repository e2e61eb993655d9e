// SPDX-License-Identifier: EPL-2.0
package wainscribe.cutting.solver;

import java.util.function.BooleanSupplier;

/** Ends a search: when somebody says stop, or after a number of steps, which unlike time is the same in every run. */
public final class SearchLimit {

	private final BooleanSupplier stop;
	private long steps;

	/**
	 * Makes a limit.
	 *
	 * @param stop  asked now and then
	 * @param steps most steps
	 */
	public SearchLimit(BooleanSupplier stop, long steps) {
		this.stop = stop;
		this.steps = steps;
	}

	/** Returns a limit of its own for a part of the search, of no more steps than there are. */
	SearchLimit part(long most) {
		return new SearchLimit(stop, Math.min(most, steps));
	}

	/** Counts steps done elsewhere. */
	void spend(long count) {
		steps -= count;
	}

	/** Returns the steps left. */
	long left() {
		return Math.max(0, steps);
	}

	boolean isReached() {
		return steps <= 0 || stop.getAsBoolean();
	}
}
