// SPDX-License-Identifier: EPL-2.0
package wainscribe.takeoff;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static wainscribe.takeoff.SampleRoom.frame;
import static wainscribe.takeoff.SampleRoom.mm;

import java.math.BigDecimal;
import java.util.List;

import org.junit.jupiter.api.Test;

import wainscribe.model.Material;
import wainscribe.model.PriceUnit;
import wainscribe.model.Surface;
import wainscribe.model.length.LengthUnit;
import wainscribe.model.measure.Measure;
import wainscribe.profile.BuiltInProfiles;

class TakeoffsTest {

	private static SampleRoom room(String name) {
		SampleRoom sample = new SampleRoom(2400);
		sample.room.setName(name);
		sample.wall("A", 3000, "90", frame("A1", 80, 220, 400, 300, 0));
		sample.paint("Sage", Surface.WALLS);
		return sample;
	}

	@Test
	void taxIsReckonedOnceOnTheSumOfThePricedLines() {
		SampleRoom sample = room("Hall");
		sample.home.setName("Schoolhouse");
		sample.home.setCurrency("USD");
		sample.home.setTax(Measure.parse("8.25%"));
		sample.price("ogee-32", PriceUnit.LENGTH, "1", mm(2400), "7.35");
		sample.price("Sage", PriceUnit.LITRE, "2.5", null, "38.10");
		HomeTakeoff takeoff = sample.takeoff();
		// moulding 7.35, its spare 7.35, paint 38.10
		assertEquals(new BigDecimal("52.80"), takeoff.totals().net());
		assertEquals(new BigDecimal("4.36"), takeoff.totals().tax());
		assertEquals(new BigDecimal("57.16"), takeoff.totals().gross());
		assertEquals(takeoff.lines().size() - 3, takeoff.totals().unpriced());
		assertEquals("USD", takeoff.currency());
		assertEquals("Schoolhouse", takeoff.home());
	}

	@Test
	void roomsBoughtTogetherShareTheirPacks() {
		SampleRoom hall = room("Hall");
		SampleRoom shower = room("Shower room");
		hall.price("ogee-32", PriceUnit.LENGTH, "1", mm(3000), "9");
		HomeTakeoff takeoff = new Takeoffs(BuiltInProfiles.catalogue()).of(hall.home, List.of(hall.design(), shower.design()));
		assertEquals(List.of("Hall", "Shower room"), takeoff.rooms().stream().map(RoomTakeoff::room).toList());
		for (RoomTakeoff room : takeoff.rooms()) {
			assertEquals(new BigDecimal("18.00"), room.totals().net());
		}
		// 2 x 1.4 m come out of one length of 3 m; one spare serves both
		assertEquals(new BigDecimal("18.00"), takeoff.totals().net());
		TakeoffLine paint = takeoff.lines().stream().filter(line -> line.key().equals("Sage")).findFirst().orElseThrow();
		assertTrue(paint.formula().startsWith("Hall: walls") && paint.formula().contains("; Shower room: walls"), paint.formula());
		// 7.2 m2 and 1.4 m of ogee, 50.81 mm round its face: 2 x 7.271 x 2 / 9 + 0.5
		assertEquals(0, new BigDecimal("3.73").compareTo(paint.quantity()), paint.formula());
	}

	@Test
	void oneProfileInTwoMaterialsIsBoughtApart() {
		SampleRoom hall = room("Hall");
		SampleRoom shower = room("Shower room");
		shower.material = Material.PVC;
		HomeTakeoff takeoff = new Takeoffs(BuiltInProfiles.catalogue()).of(hall.home, List.of(hall.design(), shower.design()));
		assertEquals(List.of("Ogee, 32 mm x 13 mm, mdf", "Ogee, 32 mm x 13 mm, pvc"), takeoff.lines().stream()
				.filter(line -> line.key().equals("ogee-32") && !line.item().startsWith("Spare")).map(TakeoffLine::item).toList());
	}

	@Test
	void everyLineSaysHowAndWhereFrom() {
		for (TakeoffLine line : room("Hall").takeoff().lines()) {
			assertTrue(!line.formula().isBlank() && !line.source().isBlank() && !line.item().isBlank(), line.key());
		}
	}

	@Test
	void inchHomesSeeFeetAndGallonsBeside() {
		SampleRoom sample = room("Hall");
		sample.home.setUnits(LengthUnit.INCH);
		assertTrue(sample.line("Sage").formula().contains("7.20 m2 (77.50 ft2)"), sample.line("Sage").formula());
		assertTrue(sample.line("Sage").formula().contains("1.62 L (0.43 gal)"), sample.line("Sage").formula());
	}
}
