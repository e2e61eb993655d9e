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
		assertTrue(plan.isCostProved());
	}

	@Test
	void remainderIsNotBoughtForMoney() {
		// a long bar would leave 2400 mm, for twice the money
		CuttingPlan plan = plan(new CuttingJob(List.of(piece("A", 1200, 2)), List.of(stock(2400, "5"), stock(4800, "10")), List.of(), Length.ZERO,
			Length.ZERO, Length.ZERO));
		assertEquals(new BigDecimal("5.00"), plan.cost());
		assertEquals(Length.ZERO, plan.longestRemainder());
		assertTrue(plan.optimal());
	}

	@Test
	void longestRemainderIsKeptOnOneBar() {
		// three bars are needed either way; 900 and 900 together leave a bar with 700 only
		CuttingPlan plan = plan(new CuttingJob(List.of(piece("A", 1500, 2), piece("B", 900, 2), piece("C", 700, 1)), List.of(stock(2400, "5")),
			List.of(), Length.ZERO, Length.ZERO, Length.ZERO));
		assertEquals(new BigDecimal("15.00"), plan.cost());
		assertEquals(Length.ofMillimetres(1700), plan.longestRemainder());
		assertTrue(plan.optimal());
	}

	@Test
	void kerfCountsBetweenPiecesOnlyAndEndTrimOnce() {
		CuttingPlan plan = plan(new CuttingJob(List.of(piece("A", 796, 3)), List.of(stock(2404, "5")), List.of(), KERF, Length.ofMillimetres(10),
			Length.ZERO));
		assertEquals(1, plan.bars().size());
		assertEquals(Length.ZERO, plan.longestRemainder());
		assertEquals(2, plan(new CuttingJob(List.of(piece("A", 796, 3)), List.of(stock(2403, "5")), List.of(), KERF, Length.ofMillimetres(10),
			Length.ZERO)).bars().size());
	}

	@Test
	void whatIsMissingIsSaidWhereBarsAreTooFew() {
		StockLength two = new StockLength("rail", Length.ofMillimetres(2400), BigDecimal.TEN, OptionalInt.of(2));
		CuttingPlan plan = plan(new CuttingJob(List.of(piece("A", 1300, 3), piece("B", 800, 1)), List.of(two), List.of(), KERF, Length.ZERO,
			Length.ZERO));
		assertEquals(List.of(piece("A", 1300, 1)), plan.unplaced());
		assertTrue(plan.optimal());
	}

	@Test
	void jobWithoutPiecesNeedsNoBars() {
		CuttingPlan plan = plan(new CuttingJob(List.of(), List.of(stock(2400, "5")), List.of(), KERF, Length.ZERO, Length.ZERO));
		assertTrue(plan.bars().isEmpty());
		assertTrue(plan.optimal());
	}

	@Test
	void profileWithoutStockIsLeftOut() {
		CuttingPlan plan = plan(new CuttingJob(List.of(piece("A", 100, 2)), List.of(), List.of(), KERF, Length.ZERO, Length.ZERO));
		assertEquals(List.of(piece("A", 100, 2)), plan.unplaced());
	}

	@Test
	void thousandsOfPiecesOfFewLengthsAreCutAtLeastCost() {
		CuttingPlan plan = plan(new CuttingJob(List.of(piece("A", 397, 4000), piece("B", 611, 3000), piece("C", 1430, 3000)),
			List.of(stock(2400, "7.50"), stock(3600, "11.10"), stock(4800, "14.90")), List.of(), KERF, Length.ZERO, Length.ZERO));
		assertTrue(plan.isCostProved());
	}
}
