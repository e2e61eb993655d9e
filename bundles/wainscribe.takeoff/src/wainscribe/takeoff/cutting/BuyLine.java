// SPDX-License-Identifier: EPL-2.0
package wainscribe.takeoff.cutting;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

import wainscribe.model.length.Length;

/**
 * Lengths to buy that are alike.
 *
 * @param kind   what they are of
 * @param length how long one is
 * @param price  price of one; null where none is known
 * @param count  how many
 */
public record BuyLine(StockKind kind, Length length, BigDecimal price, int count) {

	private static final int CENTS = 2;

	/** What bars share that are bought alike. */
	private record Alike(StockKind kind, Length length, BigDecimal price) {
	}

	/** Refuses nulls but for the price. */
	public BuyLine {
		Objects.requireNonNull(kind);
		Objects.requireNonNull(length);
	}

	/** Counts the bars that are bought, in their order. */
	public static List<BuyLine> of(List<PlannedBar> bars) {
		Map<Alike, Integer> counts = new LinkedHashMap<>();
		bars.stream().filter(PlannedBar::isBought)
				.forEach(bar -> counts.merge(new Alike(bar.kind(), bar.length(), bar.price()), 1, Integer::sum));
		List<BuyLine> lines = new ArrayList<>();
		counts.forEach((alike, count) -> lines.add(new BuyLine(alike.kind(), alike.length(), alike.price(), count)));
		return lines;
	}

	/** Returns what they cost together, two decimals; null where no price is known. */
	public BigDecimal total() {
		return price == null ? null : price.multiply(BigDecimal.valueOf(count)).setScale(CENTS, RoundingMode.HALF_UP);
	}
}
