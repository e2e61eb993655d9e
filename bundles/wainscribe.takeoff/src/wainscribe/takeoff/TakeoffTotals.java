// SPDX-License-Identifier: EPL-2.0
package wainscribe.takeoff;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Objects;

/**
 * Sums of a takeoff; money with two decimals.
 *
 * @param net        sum of the priced lines before tax
 * @param taxPercent rate of the tax
 * @param tax        tax on the sum, rounded once
 * @param gross      sum with tax
 * @param unpriced   number of lines without a price, which the sums leave out
 */
public record TakeoffTotals(BigDecimal net, BigDecimal taxPercent, BigDecimal tax, BigDecimal gross, int unpriced) {

	private static final int CENTS = 2;
	private static final int PERCENT = 2;

	/** Refuses nulls. */
	public TakeoffTotals {
		Objects.requireNonNull(net);
		Objects.requireNonNull(taxPercent);
		Objects.requireNonNull(tax);
		Objects.requireNonNull(gross);
	}

	/** Sums up lines. */
	static TakeoffTotals of(List<TakeoffLine> lines, BigDecimal taxPercent) {
		BigDecimal net = lines.stream().filter(TakeoffLine::isPriced).map(TakeoffLine::total)
				.reduce(BigDecimal.ZERO, BigDecimal::add).setScale(CENTS, RoundingMode.HALF_UP);
		BigDecimal tax = net.multiply(taxPercent).movePointLeft(PERCENT).setScale(CENTS, RoundingMode.HALF_UP);
		int unpriced = (int) lines.stream().filter(line -> !line.isPriced()).count();
		return new TakeoffTotals(net, taxPercent, tax, net.add(tax), unpriced);
	}
}
