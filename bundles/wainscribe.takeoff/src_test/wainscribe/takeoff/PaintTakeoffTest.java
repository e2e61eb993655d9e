// SPDX-License-Identifier: EPL-2.0
package wainscribe.takeoff;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static wainscribe.takeoff.SampleRoom.mm;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import wainscribe.layout.RailBand;
import wainscribe.model.Finish;
import wainscribe.model.Paint;
import wainscribe.model.Primer;
import wainscribe.model.PriceUnit;
import wainscribe.model.Surface;
import wainscribe.model.SurfaceZone;
import wainscribe.model.TrimType;
import wainscribe.model.WainscribeFactory;
import wainscribe.model.Wall;
import wainscribe.profile.BuiltInProfiles;

class PaintTakeoffTest {

	private static PaintZone zone(SampleRoom sample, Paint paint) {
		RoomMeasure measure = new RoomMeasure(sample.design(),
				new wainscribe.fabrication.CutLists(BuiltInProfiles.catalogue()).of(sample.design()));
		Amounts amounts = new Amounts(wainscribe.model.length.LengthUnit.MILLIMETRE);
		return new PaintZones(measure, new Girth(BuiltInProfiles.catalogue()), amounts).all().stream()
				.filter(zone -> zone.paint() == paint).findFirst().orElseThrow();
	}

	private static void assertNumber(String expected, BigDecimal actual) {
		assertEquals(0, new BigDecimal(expected).compareTo(actual), expected + " but was " + actual);
	}

	/**
	 * Walls and openings in millimetres, net area, coats, spreading rate, litres. Derived by the rule that openings of 1 m2
	 * and over are deducted (common practice) and checked by an independent program; litres to six decimals.
	 */
	@ParameterizedTest
	@CsvSource(delimiter = '|', value = { "2000 2500 2000 2500 | 2400 | 800x2000 600x900 | 20 | 2 | 9 | 4.444444",
			"3000 3000 | 2400 | 1000x1000 | 13.4 | 2 | 10 | 2.68", "3000 3000 | 2400 | 1000x990 | 14.4 | 2 | 10 | 2.88",
			"4000 3000 | 2500 | 900x2000 | 15.7 | 2 | 9 | 3.488889",
			"5000 4000 5000 4000 | 2600 | 900x2050 1600x1300 | 42.875 | 2 | 8 | 10.71875", "3600 2400 | 2400 | | 14.4 | 1 | 6 | 2.4" })
	void wallsLessLargeOpeningsByCoatsAndRate(String walls, int height, String openings, String net, int coats, BigDecimal rate,
			BigDecimal litres) {
		SampleRoom sample = new SampleRoom(height);
		for (String length : walls.split(" ")) {
			sample.wall("W" + sample.room.getWalls().size(), Integer.parseInt(length), "90");
		}
		int x = 0;
		for (String opening : openings == null ? new String[0] : openings.split(" ")) {
			String[] size = opening.split("x");
			SampleRoom.window(sample.room.getWalls().getFirst(), x, 0, Integer.parseInt(size[0]), Integer.parseInt(size[1]));
			x += 1000;
		}
		PaintZone zone = zone(sample, sample.paint("Sage", Surface.WALLS));
		assertNumber(net, zone.area());
		assertEquals(litres.setScale(6), PaintZone.litres(zone.area(), coats, rate).setScale(6, RoundingMode.HALF_UP));
	}

	/** The same in feet: walls of 12 and 10 ft by 8 ft, a door of 36 by 80 in; derived, exact. */
	@Test
	void inchRoomsAreMeasuredExactly() {
		SampleRoom sample = new SampleRoom(2400);
		sample.room.setHeight(wainscribe.model.length.Length.ofInches(96));
		for (int inches : new int[] { 144, 120, 144, 120 }) {
			sample.wall("W" + inches, 1, "90").setLength(wainscribe.model.length.Length.ofInches(inches));
		}
		wainscribe.model.Opening door = SampleRoom.door(sample.room.getWalls().getFirst(), 0, 1, 1, 0);
		door.setWidth(wainscribe.model.length.Length.ofInches(36));
		door.setHeight(wainscribe.model.length.Length.ofInches(80));
		assertNumber("30.84380928", zone(sample, sample.paint("Sage", Surface.WALLS)).area());
	}

	@Test
	void lowerAndUpperPartTheWallAtTheRail() {
		SampleRoom sample = new SampleRoom(2400);
		Wall wall = sample.wall("A", 5000, "90");
		sample.rail = new RailBand(mm(840), mm(900), mm(20));
		SampleRoom.window(wall, 1000, 600, 2000, 1000);
		Paint lower = sample.paint("Moss", Surface.LOWER);
		Paint upper = sample.paint("Chalk", Surface.UPPER);
		// 5.0 x 0.84 less 2.0 x 0.24; 5.0 x 1.5 less 2.0 x 0.7
		assertNumber("3.72", zone(sample, lower).area());
		assertNumber("6.1", zone(sample, upper).area());
	}

	@Test
	void aWallPaintLeavesOutWhatAnotherPaintTakes() {
		SampleRoom sample = new SampleRoom(2400);
		sample.wall("A", 5000, "90");
		sample.wall("B", 2000, "90");
		sample.rail = new RailBand(mm(840), mm(900), mm(20));
		Paint walls = sample.paint("Chalk", Surface.WALLS);
		sample.paint("Moss", Surface.LOWER).getZone().getWalls().add("A");
		assertNumber("12.3", zone(sample, walls).area());
	}

	@Test
	void aSlopedWallIsATrapezoid() {
		SampleRoom sample = new SampleRoom(2400);
		Wall wall = sample.wall("A", 3000, "90");
		wall.setHeightRight(mm(1200));
		assertNumber("5.4", zone(sample, sample.paint("Chalk", Surface.WALLS)).area());
	}

	@Test
	void mouldingIsPaintedByItsGirth() {
		SampleRoom sample = new SampleRoom(2400);
		sample.frame = new wainscribe.layout.MouldingSection("bead-18", mm(18), mm(9));
		sample.wall("A", 3000, "90", SampleRoom.frame("A1", 80, 220, 500, 500, 0));
		PaintZone zone = zone(sample, sample.paint("Ivory", Surface.TRIM));
		// 2 m of half round of radius 9 mm: pi x 9 mm wide, to 0.001 mm
		assertNumber("0.056548", zone.mould());
		assertEquals(zone.mould(), zone.primed());
	}

	@Test
	void trimTakesWhatStaysAndTheCasings() {
		SampleRoom sample = new SampleRoom(2400);
		Wall wall = sample.wall("A", 3000, "90");
		wainscribe.model.ExistingTrim base = SampleRoom.trim(wall, TrimType.BASE, true);
		base.setHeight(mm(100));
		base.setDepth(mm(15));
		SampleRoom.trim(wall, TrimType.CHAIR_RAIL, false).setHeight(mm(60));
		SampleRoom.door(wall, 1000, 800, 2000, 70).setCasingDepth(mm(20));
		// 3.0 x 0.115 + (2 x 2.0 + 0.8) x 0.09
		assertNumber("0.777", zone(sample, sample.paint("Ivory", Surface.TRIM)).area());
	}

	@Test
	void theCeilingIsTheFloorPlan() {
		SampleRoom sample = new SampleRoom(2400);
		for (int length : new int[] { 3000, 1000, 1000, 1000, 2000, 2000 }) {
			sample.wall("W" + sample.room.getWalls().size(), length, "90");
		}
		// An L: 3 x 1 and, beside an outside corner after the third wall, 2 x 1
		sample.room.getWalls().get(2).setAngle(new BigDecimal("270"));
		Paint ceiling = sample.paint("White", Surface.CEILING);
		assertNumber("5", zone(sample, ceiling).area());
		sample.room.setOpen(true);
		assertNull(zone(sample, ceiling).area());
		TakeoffLine line = sample.line("White");
		assertNull(line.quantity());
		assertTrue(line.formula().contains("measure this area on site"));
	}

	@Test
	void roughWallsTakeMoreAndUnsoundOnesArePrimed() {
		SampleRoom sample = new SampleRoom(2500);
		sample.wall("A", 4000, "90");
		Paint paint = sample.paint("Chalk", Surface.WALLS);
		assertNumber("9", zone(sample, paint).spread());
		assertNumber("0", zone(sample, paint).primed());
		Finish finish = WainscribeFactory.eINSTANCE.createFinish();
		SurfaceZone where = WainscribeFactory.eINSTANCE.createSurfaceZone();
		where.setSurface(Surface.WALLS);
		finish.setZone(where);
		finish.setTexture(true);
		finish.setSound(wainscribe.model.Soundness.CHALKING);
		sample.room.getFinishes().add(finish);
		assertNumber("7.65", zone(sample, paint).spread());
		assertNumber("10", zone(sample, paint).primed());
		paint.setPrimer(Primer.NONE);
		assertNumber("0", zone(sample, paint).primed());
	}

	@Test
	void theLineShowsItsFormulaAndTheCheapestCans() {
		SampleRoom sample = new SampleRoom(2400);
		for (int length : new int[] { 2000, 2500, 2000, 2500 }) {
			sample.wall("W" + length, length, "90");
		}
		SampleRoom.door(sample.room.getWalls().getFirst(), 500, 800, 2000, 0);
		sample.paint("Sage", Surface.WALLS).setColour("#8a9a94");
		sample.price("Sage", PriceUnit.LITRE, "1", null, "18");
		sample.price("Sage", PriceUnit.LITRE, "2.5", null, "38");
		sample.price("Sage", PriceUnit.LITRE, "5", null, "69");
		TakeoffLine line = sample.line("Sage");
		assertEquals("Sage, #8a9a94", line.item());
		assertEquals("Reading room: walls 21.60 m2 - openings of 1 m2 and over 1.60 m2 = 20.00 m2; 20.00 m2 x 2 coats / 9 m2/L"
				+ " = 4.44 L; + 0.50 L touch-up paint = 4.94 L", line.formula());
		assertNumber("4.94", line.quantity());
		assertEquals(List.of(new PackCount(1, new BigDecimal("5"), "L", new BigDecimal("69"))), line.packs());
		assertEquals(new BigDecimal("69.00"), line.total());
	}
}
