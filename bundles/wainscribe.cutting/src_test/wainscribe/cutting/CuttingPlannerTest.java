// SPDX-License-Identifier: EPL-2.0
package wainscribe.cutting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.List;
import java.util.OptionalInt;

import org.junit.jupiter.api.Test;

import wainscribe.model.length.Length;

class CuttingPlannerTest {

	private static final Length KERF = Length.ofMillimetres(3);

	private static PieceDemand piece(String label, long millimetres, int quantity) {
		return new PieceDemand(label, "rail", Length.ofMillimetres(millimetres), quantity);
	}

	private static StockLength stock(long millimetres, String price) {
		return new StockLength("rail", Length.ofMillimetres(millimetres), new BigDecimal(price), OptionalInt.empty());
	}

	private static CuttingPlan plan(CuttingJob job) {
		CuttingPlan plan = new CuttingPlanner().plan(job, PlanWatch.PATIENT);
		PlanCheck.check(job, plan);
		return plan;
	}

	@Test
	void offcutIsTakenBeforeABarIsBought() {
		CuttingPlan plan = plan(new CuttingJob(List.of(piece("A", 1000, 3), piece("B", 700, 1)), List.of(stock(2400, "7.50"), stock(4800, "14.00")),
			List.of(new Offcut("old", "rail", Length.ofMillimetres(1010))), KERF, Length.ZERO, Length.ofMillimetres(300)));
		assertEquals(new BigDecimal("14.00"), plan.cost());
		assertTrue(plan.unplaced().isEmpty());
	}

	@Test
	void pieceTooLongForEveryBarIsLeftOut() {
		CuttingPlan plan = plan(new CuttingJob(List.of(piece("A", 2401, 2), piece("B", 2400, 1)), List.of(stock(2400, "7.50")), List.of(), KERF,
			Length.ZERO, Length.ZERO));
		assertEquals(List.of(piece("A", 2401, 2)), plan.unplaced());
		assertEquals(1, plan.bars().size());
	}

	@Test
	void tenThousandEqualPiecesAreCutFromFullBars() {
		CuttingPlan plan = plan(new CuttingJob(List.of(piece("A", 397, 10_000)), List.of(stock(2400, "7.50")), List.of(), KERF, Length.ZERO,
			Length.ZERO));
		assertEquals(1667, plan.bars().size());
	}
}
