// SPDX-License-Identifier: EPL-2.0
package wainscribe.takeoff;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static wainscribe.takeoff.SampleRoom.frame;
import static wainscribe.takeoff.SampleRoom.mm;

import java.math.BigDecimal;
import java.util.List;

import org.junit.jupiter.api.Test;

import wainscribe.layout.MouldingSection;
import wainscribe.layout.RailBand;
import wainscribe.model.PriceUnit;

class MouldingTakeoffTest {

	private static SampleRoom oneFrame() {
		SampleRoom sample = new SampleRoom(2400);
		sample.wall("A", 3000, "90", frame("A1", 80, 220, 1200, 600, 0));
		return sample;
	}

	private static List<TakeoffLine> mouldings(SampleRoom sample) {
		return sample.takeoff().lines().stream().filter(line -> line.group().equals("Mouldings")).toList();
	}

	@Test
	void wholeLengthsAreCountedAndOneIsSpare() {
		SampleRoom sample = oneFrame();
		sample.stock = List.of(mm(2400));
		List<TakeoffLine> lines = mouldings(sample);
		assertEquals(2, lines.size());
		TakeoffLine line = lines.getFirst();
		assertEquals("ogee-32", line.key());
		assertEquals("Ogee, 32 mm x 13 mm, mdf", line.item());
		assertEquals(0, new BigDecimal("3.6").compareTo(line.quantity()));
		assertEquals(2, line.packs().getFirst().count());
		assertFalse(line.isPriced());
		assertTrue(line.formula().startsWith("4 pieces, 3.60 m in all, cutting plan with 3 mm kerf: 2 x 2400 mm = 4.80 m"),
				line.formula());
		assertEquals("Spare length: Ogee, 32 mm x 13 mm, mdf", lines.get(1).item());
		assertEquals(1, lines.get(1).packs().getFirst().count());
	}

	@Test
	void theCheapestLengthsAreBought() {
		SampleRoom sample = oneFrame();
		sample.price("ogee-32", PriceUnit.LENGTH, "1", mm(1000), "1");
		sample.price("ogee-32", PriceUnit.LENGTH, "1", mm(2400), "7.50");
		sample.price("ogee-32", PriceUnit.LENGTH, "1", mm(3700), "14.90");
		TakeoffLine line = mouldings(sample).getFirst();
		// 1000 mm is too short for a side, two of 2400 cost 15.00, one of 3700 holds all with three kerfs
		assertEquals(List.of(new PackCount(1, new BigDecimal("3.7"), "m", new BigDecimal("14.90"))),
				line.packs().stream().map(pack -> new PackCount(pack.count(), pack.size().stripTrailingZeros(), pack.unit(),
						pack.unitPrice())).toList());
		assertEquals(new BigDecimal("14.90"), line.total());
		// the spare is the cheapest that can replace any side
		assertEquals(new BigDecimal("7.50"), mouldings(sample).get(1).total());
	}

	@Test
	void aPriceForTheMaterialGoesFirst() {
		SampleRoom sample = oneFrame();
		sample.price("ogee-32", PriceUnit.LENGTH, "1", mm(2400), "7.50");
		sample.price("ogee-32 mdf", PriceUnit.LENGTH, "1", mm(2400), "5");
		sample.price("ogee-32 poplar", PriceUnit.LENGTH, "1", mm(2400), "4");
		assertEquals("ogee-32 mdf", mouldings(sample).getFirst().key());
		assertEquals(new BigDecimal("10.00"), mouldings(sample).getFirst().total());
	}

	@Test
	void withoutStockLengthsWasteIsAdded() {
		TakeoffLine line = mouldings(oneFrame()).getFirst();
		assertEquals("4 pieces, 3.60 m in all, + 15 % waste = 4.14 m (no stock length known)", line.formula());
		assertEquals(0, new BigDecimal("4.14").compareTo(line.quantity()));
		assertTrue(line.packs().isEmpty());
	}

	@Test
	void mouldingWithoutAProfileIsNamedByItsMeasures() {
		SampleRoom sample = new SampleRoom(2400);
		sample.wall("A", 3000, "90");
		sample.rail = new RailBand(mm(840), mm(900), mm(20));
		TakeoffLine line = mouldings(sample).getFirst();
		assertEquals("rail 60 mm x 20 mm", line.key());
		assertEquals("rail moulding 60 mm x 20 mm, mdf", line.item());
		assertEquals("3 pieces, 3.04 m in all, + 10 % waste = 3.34 m (no stock length known)", line.formula());
	}

	@Test
	void aRunLongerThanEveryLengthIsCutAsTwoPiecesAndTwoReturns() {
		SampleRoom sample = new SampleRoom(2400);
		sample.wall("A", 3000, "90");
		sample.rail = new RailBand(mm(840), mm(900), mm(20));
		sample.railSection = new MouldingSection("ogee-rail-64", mm(60), mm(20));
		sample.stock = List.of(mm(2400));
		TakeoffLine line = mouldings(sample).getFirst();
		assertEquals(2, line.packs().getFirst().count());
		assertTrue(line.formula().startsWith("4 pieces, 3.06 m in all"), line.formula());
	}
}
