// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.cutting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.List;

import org.junit.jupiter.api.Test;

import wainscribe.cutting.BarSource;
import wainscribe.model.Material;
import wainscribe.model.length.Length;
import wainscribe.takeoff.cutting.CuttingDecisions;
import wainscribe.takeoff.cutting.HomePlan;
import wainscribe.takeoff.cutting.PlannedBar;
import wainscribe.takeoff.cutting.PlannedPiece;
import wainscribe.takeoff.cutting.StockKind;
import wainscribe.ui.cutting.BarSheet.Heading;
import wainscribe.ui.cutting.BarSheet.Part;
import wainscribe.ui.cutting.BarSheet.Strip;

class BarSheetTest {

	private static final StockKind OGEE = new StockKind("ogee", Material.PINE);
	private static final StockKind RAIL = new StockKind("rail", Material.PINE);

	private static Length mm(long millimetres) {
		return Length.ofMillimetres(millimetres);
	}

	private static PlannedBar bar(int number, StockKind kind, long length, long... pieces) {
		List<PlannedPiece> cuts = java.util.stream.LongStream.range(0, pieces.length)
				.mapToObj(i -> new PlannedPiece("Hall", kind.profile() + number + "/" + i, mm(pieces[(int) i]), null)).toList();
		long used = java.util.stream.LongStream.of(pieces).sum();
		return new PlannedBar(number, BarSource.STOCK, "", "", kind, mm(length), BigDecimal.TEN, cuts, mm(length - used));
	}

	private static BarSheet sheet(int width) {
		HomePlan plan = new HomePlan(new CuttingDecisions(mm(10), mm(100), mm(300)),
				List.of(bar(1, OGEE, 2000, 900, 900), bar(2, OGEE, 1000, 500), bar(3, RAIL, 2000, 1500)), List.of(bar(1, OGEE, 2000, 400)),
				BigDecimal.TEN, BigDecimal.ONE, false, List.of(), List.of());
		return BarSheet.of(plan, width, 16, StockKind::profile, "accepted");
	}

	@Test
	void eachMouldingHasItsHeadingAndAcceptedPlansComeLast() {
		assertEquals(List.of("ogee", "rail", "accepted"), sheet(1024).rows().stream().filter(Heading.class::isInstance)
				.map(row -> ((Heading) row).text()).toList());
		assertTrue(sheet(1024).strips().getLast().accepted());
	}

	@Test
	void theLongestBarFillsTheWidthAndAllHaveItsScale() {
		List<Strip> strips = sheet(1024).strips();
		// 1000 px between the margins for 2000 mm
		assertEquals(1000, strips.get(0).width());
		assertEquals(500, strips.get(1).width());
		assertEquals(50, strips.get(0).trim());
		List<Part> parts = strips.get(0).parts();
		assertEquals(12 + 50, parts.get(0).x());
		// the kerf of 10 mm stays free between the pieces
		assertEquals(12 + 50 + 455, parts.get(1).x());
		assertTrue(parts.get(0).x() + parts.get(0).width() < parts.get(1).x());
	}

	@Test
	void rowsDoNotOverlapAndTheSheetHoldsThem() {
		BarSheet sheet = sheet(700);
		for (int i = 1; i < sheet.strips().size(); i++) {
			Strip above = sheet.strips().get(i - 1);
			assertTrue(above.strip() + above.height() < sheet.strips().get(i).y());
		}
		Strip last = sheet.strips().getLast();
		assertTrue(last.strip() + last.height() < sheet.height());
	}

	@Test
	void aPieceIsFoundUnderThePointerAndNothingBesideIt() {
		BarSheet sheet = sheet(1024);
		Strip strip = sheet.strips().get(0);
		Part second = strip.parts().get(1);
		assertEquals(second, sheet.at(second.x() + 3, strip.strip() + 3).orElseThrow().part());
		assertTrue(sheet.at(second.x() - 2, strip.strip() + 3).isEmpty(), "the kerf");
		assertTrue(sheet.at(second.x() + 3, strip.y() + 1).isEmpty(), "the words");
		assertTrue(sheet.at(strip.end() + 1, strip.strip() + 3).isEmpty(), "the leftover");
	}

	@Test
	void aNarrowViewKeepsAReadableLeastWidth() {
		assertEquals(160 - 24, sheet(10).strips().get(0).width());
	}
}
