// SPDX-License-Identifier: EPL-2.0
package wainscribe.takeoff;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static wainscribe.takeoff.SampleRoom.frame;
import static wainscribe.takeoff.SampleRoom.mm;

import java.math.BigDecimal;

import org.junit.jupiter.api.Test;

import wainscribe.layout.RailBand;
import wainscribe.model.PriceUnit;
import wainscribe.model.RoomUse;
import wainscribe.model.Surface;

/** Rates are common practice or general guides; the expected numbers are reckoned by hand from them. */
class FixingTakeoffTest {

	/** 4 m of frame in four pieces, 3 m of rail in one. */
	private static SampleRoom sample() {
		SampleRoom sample = new SampleRoom(2400);
		sample.wall("A", 3000, "90", frame("A1", 80, 220, 1400, 600, 0));
		sample.rail = new RailBand(mm(840), mm(900), mm(20));
		return sample;
	}

	private static void assertQuantity(String expected, TakeoffLine line) {
		assertEquals(0, new BigDecimal(expected).compareTo(line.quantity()), line.formula());
	}

	@Test
	void cartridgesAreRoundedUp() {
		// adhesive 7 m / 15 m; caulk 2 x 4 + 2 x 3 = 14 m of 4.5 mm2 = 63 mL, with 15 % 72.45 of 300 mL
		assertQuantity("1", sample().line(QuantityKey.ADHESIVE));
		assertEquals("(frames and strips 4.00 m + rail 3.04 m) / 15 m of 5 mm bead a cartridge = 0.47, rounded up",
				sample().line(QuantityKey.ADHESIVE).formula());
		assertQuantity("1", sample().line(QuantityKey.CAULK));
		assertTrue(sample().line(QuantityKey.CAULK).formula().endsWith("= 0.25, rounded up"));
	}

	@Test
	void nailsStandTwoAtEachEndAndOneEach350() {
		// (4 x 4 + 4 / 0.35) x 1.1 = 30.17; (1 x 4 + 3.04 / 0.35) x 1.1 = 13.95, returns being glued
		assertQuantity("31", sample().line(QuantityKey.BRADS));
		assertQuantity("14", sample().line(QuantityKey.NAILS));
		assertQuantity("0.0045", sample().line(QuantityKey.FILLER));
	}

	@Test
	void dampRoomsTakeNailsThatDoNotRust() {
		SampleRoom sample = sample();
		assertEquals("Brads, 18 gauge", sample.line(QuantityKey.BRADS).item());
		sample.room.setUse(RoomUse.BATH_WITH_SHOWER);
		assertEquals("Brads, 18 gauge, stainless or galvanised for the damp room", sample.line(QuantityKey.BRADS).item());
	}

	@Test
	void sundriesFollowTheMouldingAndThePaintedEdges() {
		SampleRoom sample = sample();
		// 7 m x 2 / 12 m a sheet
		assertQuantity("2", sample.line(QuantityKey.SANDPAPER));
		assertTrue(sample.takeoff().lines().stream().noneMatch(line -> line.key().equals(QuantityKey.TAPE)));
		SampleRoom.door(sample.room.getWalls().getFirst(), 2000, 700, 2000, 70);
		sample.paint("Chalk", Surface.WALLS);
		// (3.0 + 2.3 + 4.7) x 1.1
		assertQuantity("11", sample.line(QuantityKey.TAPE));
	}

	@Test
	void aBoxOfBradsCoversTheNeed() {
		SampleRoom sample = sample();
		sample.price(QuantityKey.BRADS, PriceUnit.EACH, "20", null, "2.10");
		TakeoffLine line = sample.line(QuantityKey.BRADS);
		assertEquals(2, line.packs().getFirst().count());
		assertEquals(new BigDecimal("4.20"), line.total());
	}

	@Test
	void aRoomWithoutWorkTakesNothing() {
		SampleRoom sample = new SampleRoom(2400);
		sample.wall("A", 3000, "90");
		assertTrue(sample.takeoff().lines().isEmpty());
	}
}
