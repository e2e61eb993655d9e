// SPDX-License-Identifier: EPL-2.0
package wainscribe.takeoff.cutting;

import java.math.BigDecimal;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;

import wainscribe.model.length.Length;

/**
 * The cutting plan of a home: what is cut already by accepted plans, and which of the other pieces comes from which bar.
 *
 * @param decisions  how bars are sawn
 * @param bars       bars still to be cut, offcuts of a kind before new lengths
 * @param accepted   bars of accepted plans
 * @param cost       what the bars still to be cut cost, as far as prices are known
 * @param lowerBound no plan costs less
 * @param optimal    whether it is proved that no plan costs less, and none of this cost leaves a longer piece
 * @param unplaced   pieces that no length is long enough for, or none is known
 * @param unpriced   kinds that are planned by length, because a price is missing: least metres are bought
 */
public record HomePlan(CuttingDecisions decisions, List<PlannedBar> bars, List<PlannedBar> accepted, BigDecimal cost,
		BigDecimal lowerBound, boolean optimal, List<PlannedPiece> unplaced, List<StockKind> unpriced) {

	/** Refuses nulls and copies the lists. */
	public HomePlan {
		Objects.requireNonNull(decisions);
		Objects.requireNonNull(cost);
		Objects.requireNonNull(lowerBound);
		bars = List.copyOf(bars);
		accepted = List.copyOf(accepted);
		unplaced = List.copyOf(unplaced);
		unpriced = List.copyOf(unpriced);
	}

	/** Returns what is still to be bought, alike together. */
	public List<BuyLine> buys() {
		return BuyLine.of(bars);
	}

	/** Returns all bars of a kind, those of accepted plans first. */
	public List<PlannedBar> barsOf(StockKind kind) {
		return Stream.concat(accepted.stream(), bars.stream()).filter(bar -> bar.kind().equals(kind)).toList();
	}

	/** Returns the bars of this plan whose leftover is worth keeping. */
	public List<PlannedBar> leavingOffcuts() {
		return bars.stream().filter(bar -> isOffcut(bar.remainder())).toList();
	}

	/** Tells whether a leftover is worth keeping. */
	public boolean isOffcut(Length remainder) {
		return remainder.signum() > 0 && !remainder.isLessThan(decisions.shortestOffcut());
	}

	/** Tells whether it is proved that no plan costs less; never where a price is missing. */
	public boolean isCostProved() {
		return unpriced.isEmpty() && (optimal || unplaced.isEmpty() && cost.compareTo(lowerBound) == 0);
	}
}
