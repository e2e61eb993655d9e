// SPDX-License-Identifier: EPL-2.0
package wainscribe.cutting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.Map;
import java.util.TreeMap;

import wainscribe.model.length.Length;

/** Checks a plan against its job from the definition alone. */
final class PlanCheck {

	private PlanCheck() {
	}

	static void check(CuttingJob job, CuttingPlan plan) {
		BigDecimal cost = BigDecimal.ZERO;
		Map<String, Integer> pieces = new TreeMap<>();
		Map<String, Integer> bars = new TreeMap<>();
		for (Bar bar : plan.bars()) {
			checkBar(job, bar);
			cost = cost.add(bar.price());
			bar.pieces().forEach(piece -> pieces.merge(bar.profile() + "|" + piece.label() + "|" + piece.length(), 1, Integer::sum));
			bars.merge(bar.source() + "|" + bar.profile() + "|" + bar.length() + "|"
				+ (bar.source() == BarSource.OFFCUT ? bar.label() : bar.price().stripTrailingZeros()), 1, Integer::sum);
		}
		plan.unplaced().forEach(piece -> pieces.merge(piece.profile() + "|" + piece.label() + "|" + piece.length(), piece.quantity(),
			Integer::sum));
		Map<String, Integer> wanted = new TreeMap<>();
		job.pieces().forEach(piece -> wanted.merge(piece.profile() + "|" + piece.label() + "|" + piece.length(), piece.quantity(),
			Integer::sum));
		assertEquals(wanted, pieces, "pieces");
		assertEquals(0, cost.compareTo(plan.cost()), "cost " + cost + " against " + plan.cost());
		assertTrue(plan.lowerBound().compareTo(plan.cost()) <= 0, "bound " + plan.lowerBound() + " above cost " + plan.cost());
		checkNumbers(job, bars);
	}

	private static void checkBar(CuttingJob job, Bar bar) {
		assertFalse(bar.pieces().isEmpty(), "empty bar");
		Length sum = bar.pieces().stream().map(PlacedPiece::length).reduce(Length.ZERO, Length::plus);
		Length usable = bar.length().minus(job.endTrim());
		assertFalse(sum.plus(job.kerf().times(bar.pieces().size() - 1L)).isMoreThan(usable), "overfull " + bar);
		assertEquals(usable.minus(sum).minus(job.kerf().times(bar.pieces().size())).max(Length.ZERO), bar.remainder(), "remainder");
	}

	private static void checkNumbers(CuttingJob job, Map<String, Integer> bars) {
		Map<String, Long> had = new TreeMap<>();
		job.stock().forEach(row -> had.merge(BarSource.STOCK + "|" + row.profile() + "|" + row.length() + "|" + row.price().stripTrailingZeros(),
			row.available().isPresent() ? row.available().getAsInt() : (long) Integer.MAX_VALUE, Long::sum));
		job.offcuts().forEach(row -> had.merge(BarSource.OFFCUT + "|" + row.profile() + "|" + row.length() + "|" + row.label(), 1L, Long::sum));
		bars.forEach((bar, number) -> assertTrue(number <= had.getOrDefault(bar, 0L), bar + ": " + number + " of " + had.get(bar)));
	}
}
