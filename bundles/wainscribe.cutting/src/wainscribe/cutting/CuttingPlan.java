// SPDX-License-Identifier: EPL-2.0
package wainscribe.cutting;

import java.math.BigDecimal;
import java.util.List;
import java.util.Objects;

import wainscribe.model.length.Length;

/**
 * Which piece from which bar.
 *
 * @param bars       the bars used, by profile; each holds at least one piece
 * @param cost       sum of their prices
 * @param lowerBound no plan that leaves as little out costs less than this
 * @param optimal    whether it is proved that no plan leaves less out, none of those costs less, and none of those has a
 *                   longer remainder
 * @param unplaced   pieces for which no bar is long enough or none is left; empty if all are placed
 */
public record CuttingPlan(List<Bar> bars, BigDecimal cost, BigDecimal lowerBound, boolean optimal, List<PieceDemand> unplaced) {

	/** Refuses nulls and copies the lists. */
	public CuttingPlan {
		bars = List.copyOf(bars);
		Objects.requireNonNull(cost, "cost"); //$NON-NLS-1$
		Objects.requireNonNull(lowerBound, "lowerBound"); //$NON-NLS-1$
		unplaced = List.copyOf(unplaced);
	}

	/** Returns whether no cheaper plan exists, whatever is known of the remainder. */
	public boolean isCostProved() {
		return optimal || unplaced.isEmpty() && cost.compareTo(lowerBound) == 0;
	}

	/** Returns the longest remainder of a single bar, zero without bars. */
	public Length longestRemainder() {
		return bars.stream().map(Bar::remainder).reduce(Length.ZERO, Length::max);
	}
}
