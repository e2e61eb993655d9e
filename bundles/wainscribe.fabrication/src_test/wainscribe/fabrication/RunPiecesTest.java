// SPDX-License-Identifier: EPL-2.0
package wainscribe.fabrication;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static wainscribe.fabrication.SampleRoom.mm;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import wainscribe.fabrication.CornerJoints.Cut;
import wainscribe.layout.MouldingSection;
import wainscribe.layout.RailBand;
import wainscribe.model.CasingJoint;
import wainscribe.model.Fixture;
import wainscribe.model.FixtureType;
import wainscribe.model.HeatSource;
import wainscribe.model.InsideJoint;
import wainscribe.model.Material;
import wainscribe.model.ProfileUse;
import wainscribe.model.TrimType;
import wainscribe.model.WainscribeFactory;
import wainscribe.model.Wall;
import wainscribe.model.length.Length;
import wainscribe.profile.BuiltInProfiles;

class RunPiecesTest {

	private final CutLists cutLists = new CutLists(BuiltInProfiles.catalogue());

	private List<Piece> of(SampleRoom sample, PieceKind kind) {
		return cutLists.of(sample.design()).pieces().stream().filter(piece -> piece.kind() == kind)
				.filter(piece -> !piece.label().contains("/return-")).toList();
	}

	private static SampleRoom box(String... angles) {
		SampleRoom sample = new SampleRoom(2400);
		int[] lengths = { 3000, 2000, 3000, 2000 };
		for (int i = 0; i < lengths.length; i++) {
			sample.wall(String.valueOf((char) ('A' + i)), lengths[i], angles.length == 0 ? "90" : angles[i]);
		}
		return sample;
	}

	@Test
	void theLongerRailRunsThroughAndTheShorterIsCopedToIt() {
		SampleRoom sample = box();
		sample.rail = new RailBand(mm(840), mm(900), mm(20));
		List<Piece> rails = of(sample, PieceKind.RAIL);
		assertEquals(List.of("A/rail", "B/rail", "C/rail", "D/rail"), rails.stream().map(Piece::label).toList());
		Piece first = rails.getFirst();
		assertEquals(mm(3000), first.longPoint());
		assertEquals(mm(3000), first.shortPoint());
		assertEquals(PieceEnd.square(Joint.BUTT_TO_WALL), first.start());
		assertEquals(PieceEnd.square(Joint.BUTT_TO_WALL), first.end());
		Piece second = rails.get(1);
		assertEquals(mm(2000), second.longPoint());
		assertEquals(mm(1960), second.shortPoint());
		assertEquals(new PieceEnd(Joint.COPE, BigDecimal.valueOf(45), BigDecimal.ZERO, LongSide.BACK), second.start());
		assertEquals(second.start(), second.end());
		assertEquals("rail 60 mm x 20 mm", first.profile());
	}

	@Test
	void cornersUseHalfTheMeasuredAngle() {
		SampleRoom sample = box("135", "60", "88", "77");
		sample.rail = new RailBand(mm(840), mm(900), mm(20));
		List<Piece> rails = of(sample, PieceKind.RAIL);
		assertEquals(Joint.INSIDE_MITRE, rails.get(0).end().joint());
		assertEquals(0, new BigDecimal("22.5").compareTo(rails.get(0).end().turn()));
		assertEquals(rails.get(0).end(), rails.get(1).start());
		assertEquals(0, new BigDecimal("60").compareTo(rails.get(1).end().turn()));
		assertEquals(Joint.BUTT_TO_WALL, rails.get(2).end().joint());
		assertEquals(new PieceEnd(Joint.COPE, BigDecimal.valueOf(46), BigDecimal.ZERO, LongSide.BACK), rails.get(3).start());
		assertEquals(new PieceEnd(Joint.BUTT_TO_WALL, BigDecimal.valueOf(2), BigDecimal.ZERO, LongSide.BACK), rails.get(2).end());
	}

	@Test
	void anOutsideCornerIsMitredWithTheLongPointAtTheFace() {
		SampleRoom sample = new SampleRoom(2400);
		sample.room.setOpen(true);
		sample.wall("A", 1000, "270");
		sample.wall("B", 800, "90");
		sample.rail = new RailBand(mm(840), mm(900), mm(20));
		List<Piece> rails = of(sample, PieceKind.RAIL);
		assertEquals(new PieceEnd(Joint.OUTSIDE_MITRE, BigDecimal.valueOf(45), BigDecimal.ZERO, LongSide.FACE), rails.get(0).end());
		assertEquals(Joint.RETURN, rails.get(0).start().joint());
		assertEquals(mm(1020), rails.get(0).longPoint());
		assertEquals(mm(980), rails.get(0).shortPoint());
		assertEquals(mm(820), rails.get(1).longPoint());
	}

	@Test
	void aRailButtsToTheCasingsOfADoor() {
		SampleRoom sample = box();
		SampleRoom.door(sample.room.getWalls().get(0), 1000, 800, 2000, 70);
		sample.rail = new RailBand(mm(840), mm(900), mm(20));
		List<Piece> rails = of(sample, PieceKind.RAIL);
		assertEquals("A/rail-1", rails.get(0).label());
		assertEquals(mm(930), rails.get(0).longPoint());
		assertEquals(PieceEnd.square(Joint.BUTT_TO_CASING), rails.get(0).end());
		assertEquals(mm(1130), rails.get(1).longPoint());
		assertEquals(mm(1870), rails.get(1).x0());
	}

	@Test
	void aDoorInTheCornerLeavesTheNeighbourToButt() {
		SampleRoom sample = box();
		SampleRoom.door(sample.room.getWalls().get(0), 2130, 800, 2000, 70);
		sample.rail = new RailBand(mm(840), mm(900), mm(20));
		Piece second = of(sample, PieceKind.RAIL).get(1);
		assertEquals("B/rail", second.label());
		assertEquals(PieceEnd.square(Joint.BUTT_TO_WALL), second.start());
	}

	@Test
	void aBaseThatStaysGivesNoPieceAndOneThatGoesIsARemoval() {
		SampleRoom sample = box();
		sample.base = mm(120);
		sample.profiles = Map.of(ProfileUse.BASE, "ogee-base-120");
		SampleRoom.trim(sample.room.getWalls().get(0), TrimType.BASE, true);
		SampleRoom.trim(sample.room.getWalls().get(1), TrimType.BASE, false);
		CutList list = cutLists.of(sample.design());
		assertEquals(List.of("B/base", "C/base", "D/base"), list.pieces().stream().map(Piece::label).toList());
		assertEquals("ogee-base-120", list.pieces().getFirst().profile());
		assertEquals(List.of(new Removal("B", TrimType.BASE, "Old base", mm(2000))), list.removals());
		assertTrue(list.pieces().getFirst().notes().isEmpty());
	}

	@Test
	void newBaseIsCopedToBaseThatStays() {
		SampleRoom sample = box();
		sample.base = mm(120);
		SampleRoom.trim(sample.room.getWalls().get(0), TrimType.BASE, true);
		List<Piece> base = of(sample, PieceKind.BASE);
		assertEquals(Joint.COPE, base.getFirst().start().joint());
		assertEquals(Joint.COPE, base.getLast().end().joint());
		assertTrue(base.getFirst().notes().getFirst().contains("15 mm"));
		sample.material = Material.METAL;
		assertEquals(PieceEnd.square(Joint.BUTT_TO_TRIM), of(sample, PieceKind.BASE).getFirst().start());
	}

	@Test
	void theBaseRunsBehindAToiletAndStopsShortOfAnElectricHeater() {
		SampleRoom sample = box();
		sample.base = mm(120);
		fixture(sample.room.getWalls().get(0), FixtureType.TOILET, 300, 400);
		fixture(sample.room.getWalls().get(0), FixtureType.HEATER, 1500, 500).setHeat(HeatSource.ELECTRIC);
		List<Piece> base = of(sample, PieceKind.BASE);
		assertEquals(mm(1500 - 305), base.get(0).longPoint());
		assertEquals(new PieceEnd(Joint.RETURN, BigDecimal.valueOf(45), BigDecimal.ZERO, LongSide.FACE), base.get(0).end());
		assertEquals(mm(2000 + 305), base.get(1).x0());
	}

	private static Fixture fixture(Wall wall, FixtureType type, int x, int width) {
		Fixture fixture = WainscribeFactory.eINSTANCE.createFixture();
		fixture.setType(type);
		fixture.setX(mm(x));
		fixture.setY(mm(50));
		fixture.setWidth(mm(width));
		fixture.setHeight(mm(300));
		wall.getFixtures().add(fixture);
		return fixture;
	}

	@Test
	void plasterIsMitredInsideAsItCannotBeCoped() {
		SampleRoom sample = box();
		sample.material = Material.PLASTER;
		sample.crown = mm(70);
		sample.profiles = Map.of(ProfileUse.CROWN, "cove-crown-70");
		Piece crown = of(sample, PieceKind.CROWN).getFirst();
		assertEquals(Joint.INSIDE_MITRE, crown.start().joint());
		assertEquals(35.2644, crown.start().turn().doubleValue(), 0.0001);
		assertEquals(30.0, crown.start().tilt().doubleValue(), 0.0001);
		assertEquals(LongSide.LOWER_EDGE, crown.start().longSide());
	}

	/**
	 * Crown lengths: wall, projection, drop, corner left and right, edge on the ceiling, shortest stock, saw left and right.
	 * Derived from the change at a corner (projection times the cotangent of half the angle), checked with the flat-cut
	 * mitre through the face width.
	 */
	@ParameterizedTest
	@CsvSource({ "3000, 60, 76.7965, 90, 90, 2880, 3000, 31.6190, 31.6190",
			"1200, 60, 76.7965, 90, 270, 1200, 1260, 31.6190, 31.6190",
			"1500, 60, 76.7965, 270, 270, 1620, 1620, 31.6190, 31.6190",
			"900, 60, 76.7965, 135, 135, 850.2944, 900, 14.3064, 14.3064",
			"3000, 60, 76.7965, 88, 92, 2879.9269, 3000, 32.5190, 30.7331",
			"600, 75, 75, 225, 225, 662.1320, 662.1320, 16.3249, 16.3249",
			"3652, 75, 75, 91, 93, 3507.1254, 3652, 34.7944, 33.8624" })
	void crownKeepsTheWallsLengthAtItsBack(double wall, double projection, double drop, double left, double right,
			double ceiling, double stock, double sawLeft, double sawRight) {
		MouldingSection section = new MouldingSection("", length(drop), length(projection));
		RunCut cut = new RunCut(section, true, length(wall), Length.ZERO, new Cut(Joint.INSIDE_MITRE, left / 2),
				new Cut(Joint.INSIDE_MITRE, right / 2));
		Length ceilingEdge = length(wall).minus(Mitre.inset(section.thickness(), left / 2))
				.minus(Mitre.inset(section.thickness(), right / 2));
		assertEquals(ceiling, ceilingEdge.approximateMillimetres(), 0.0005);
		assertEquals(stock, cut.longPoint().approximateMillimetres(), 0.0005);
		assertEquals(sawLeft, cut.start().turn().doubleValue(), 0.0002);
		assertEquals(sawRight, cut.end().turn().doubleValue(), 0.0002);
	}

	private static Length length(double millimetres) {
		return new Length(Math.round(millimetres * Length.UNITS_PER_MILLIMETRE));
	}

	@Test
	void aRailUpAStairIsCutPlumb() {
		SampleRoom sample = new SampleRoom(2400);
		Wall stair = sample.wall("S", 2400, "90");
		stair.setFloorRight(mm(700));
		sample.rail = new RailBand(mm(840), mm(900), mm(20));
		Piece rail = of(sample, PieceKind.RAIL).getFirst();
		// 7 : 24 : 25, so the slope is 2500 long and the edges are out of step by 60 x 7 / 24 = 17.5
		assertEquals(new BigDecimal("2517.5"), rail.longPoint().toMillimetres().stripTrailingZeros());
		assertEquals(new BigDecimal("2482.5"), rail.shortPoint().toMillimetres().stripTrailingZeros());
		assertEquals(16.2602, rail.start().turn().doubleValue(), 0.0001);
		assertEquals(LongSide.LOWER_EDGE, rail.start().longSide());
		assertEquals(LongSide.UPPER_EDGE, rail.end().longSide());
	}

	/** Where a level rail meets one up a stair in one plane, each is cut at half the pitch (derived: 7 : 24 : 25). */
	@Test
	void aRailThatTurnsUpAStairIsMitredAtHalfThePitch() {
		SampleRoom sample = new SampleRoom(2400);
		sample.room.setOpen(true);
		sample.wall("F", 1000, "180");
		sample.wall("S", 2400, "90").setFloorRight(mm(700));
		sample.rail = new RailBand(mm(840), mm(900), mm(20));
		List<Piece> rails = of(sample, PieceKind.RAIL);
		PieceEnd level = rails.get(0).end();
		PieceEnd raked = rails.get(1).start();
		assertEquals(Joint.RAKE_MITRE, level.joint());
		assertEquals(16.2602 / 2, level.turn().doubleValue(), 0.0001);
		assertEquals(level, raked);
		assertEquals(LongSide.LOWER_EDGE, level.longSide());
		// tan of half the pitch is 1 / 7: the upper edges are 60 / 7 mm shorter
		assertEquals(mm(1000), rails.get(0).longPoint());
		assertEquals(1000 - 20 - 60 / 7.0, rails.get(0).shortPoint().approximateMillimetres(), 0.001);
		assertEquals(2500 + 17.5, rails.get(1).longPoint().approximateMillimetres(), 0.001);
		assertEquals(2500 - 60 / 7.0, rails.get(1).shortPoint().approximateMillimetres(), 0.001);
	}

	@Test
	void wallsInOnePlaneAreJoinedInLine() {
		SampleRoom sample = new SampleRoom(2400);
		sample.room.setOpen(true);
		sample.wall("F", 1000, "180");
		sample.wall("G", 1000, "90");
		sample.rail = new RailBand(mm(840), mm(900), mm(20));
		assertEquals(PieceEnd.square(Joint.IN_LINE), of(sample, PieceKind.RAIL).get(0).end());
	}

	@Test
	void aRunLongerThanTheStockIsScarfedOnTheStudThatKeepsTheShorterPieceLongest() {
		SampleRoom sample = box();
		sample.stock = List.of(mm(2400));
		sample.rail = new RailBand(mm(840), mm(900), mm(20));
		for (int x : new int[] { 400, 800, 1200, 2000, 2800 }) {
			SampleRoom.stud(sample.room.getWalls().get(0), x);
		}
		List<Piece> rails = of(sample, PieceKind.RAIL);
		assertEquals(List.of("A/rail-1", "A/rail-2", "B/rail"), rails.subList(0, 3).stream().map(Piece::label).toList());
		Piece under = rails.get(0);
		Piece over = rails.get(1);
		assertEquals(mm(1200), under.x1());
		assertEquals(mm(1200), over.x0());
		// the joint is centred on the stud: each piece reaches half the thickness beyond it
		assertEquals(mm(1210), under.longPoint());
		assertEquals(mm(1810), over.longPoint());
		assertEquals(new PieceEnd(Joint.SCARF, BigDecimal.valueOf(45), BigDecimal.ZERO, LongSide.BACK), under.end());
		assertEquals(new PieceEnd(Joint.SCARF, BigDecimal.valueOf(45), BigDecimal.ZERO, LongSide.FACE), over.start());
		assertTrue(under.notes().getFirst().contains("stud at 1200 mm"), under.notes()::toString);
		assertTrue(rails.get(2).notes().isEmpty());
	}

	@Test
	void baseAndRailAreNotJoinedOnOneStud() {
		SampleRoom sample = box();
		sample.stock = List.of(mm(2400));
		sample.base = mm(120);
		sample.rail = new RailBand(mm(840), mm(900), mm(20));
		SampleRoom.stud(sample.room.getWalls().get(0), 1400);
		SampleRoom.stud(sample.room.getWalls().get(0), 1800);
		assertEquals(mm(1400), of(sample, PieceKind.RAIL).getFirst().x1());
		assertEquals(mm(1800), of(sample, PieceKind.BASE).getFirst().x1());
	}

	@Test
	void withoutAMeasuredStudTheModuleIsNamed() {
		SampleRoom sample = box();
		sample.stock = List.of(mm(2400));
		sample.rail = new RailBand(mm(840), mm(900), mm(20));
		sample.room.getWalls().get(0).setStudSpacing(mm(400));
		Piece first = of(sample, PieceKind.RAIL).getFirst();
		assertEquals(mm(1500), first.x1());
		assertTrue(first.notes().getFirst().contains("every 400 mm"), first.notes()::toString);
		Piece third = of(sample, PieceKind.RAIL).get(3);
		assertTrue(third.notes().getFirst().contains("find one first"), third.notes()::toString);
	}

	@Test
	void aRailThickerThanTheCasingIsReturnedToTheWallBesideIt() {
		SampleRoom sample = box();
		SampleRoom.door(sample.room.getWalls().get(0), 1000, 800, 2000, 70).setCasingDepth(mm(16));
		sample.rail = new RailBand(mm(840), mm(900), mm(20));
		List<Piece> all = cutLists.of(sample.design()).pieces();
		assertEquals(List.of("A/rail-1", "A/rail-1/return-right", "A/rail-2", "A/rail-2/return-left"),
				all.subList(0, 4).stream().map(Piece::label).toList());
		PieceEnd mitre = new PieceEnd(Joint.RETURN, BigDecimal.valueOf(45), BigDecimal.ZERO, LongSide.FACE);
		assertEquals(mitre, all.get(0).end());
		assertEquals(mm(930), all.get(0).longPoint());
		Piece piece = all.get(1);
		assertEquals(mm(20), piece.longPoint());
		assertEquals(mm(0), piece.shortPoint());
		assertEquals(mitre, piece.start());
		assertEquals(PieceEnd.square(Joint.BUTT_TO_WALL), piece.end());
		sample.room.getWalls().get(0).getOpenings().getFirst().setCasingDepth(mm(20));
		assertEquals(PieceEnd.square(Joint.BUTT_TO_CASING), of(sample, PieceKind.RAIL).getFirst().end());
	}

	@Test
	void aPlinthBlockTakesTheBaseThatIsThickerThanTheCasing() {
		SampleRoom sample = box();
		SampleRoom.door(sample.room.getWalls().get(0), 1000, 800, 2000, 70).setCasingDepth(mm(12));
		sample.base = mm(120);
		sample.brief().setBaseAtCasing(CasingJoint.PLINTH);
		CutList list = cutLists.of(sample.design());
		Piece first = list.pieces().getFirst();
		assertEquals(PieceEnd.square(Joint.BUTT_TO_PLINTH), first.end());
		assertEquals(mm(930 - 6), first.longPoint());
		assertEquals(2, list.blocks().size());
		Block block = list.blocks().getFirst();
		assertEquals(Block.Use.PLINTH, block.use());
		assertEquals(List.of(mm(76), mm(126), mm(21)), List.of(block.width(), block.height(), block.thickness()));
	}

	@Test
	void cornerBlocksTakeTheBaseButNotTheRail() {
		SampleRoom sample = box("90", "90", "135", "90");
		sample.base = mm(120);
		sample.rail = new RailBand(mm(840), mm(900), mm(20));
		sample.brief().setInside(InsideJoint.BLOCK);
		Piece base = of(sample, PieceKind.BASE).getFirst();
		assertEquals(PieceEnd.square(Joint.BUTT_TO_BLOCK), base.start());
		assertEquals(mm(3000 - 2 * 21), base.longPoint());
		assertEquals(Joint.INSIDE_MITRE, of(sample, PieceKind.BASE).get(2).end().joint());
		assertEquals(Joint.COPE, of(sample, PieceKind.RAIL).get(1).start().joint());
		assertEquals(List.of("A/base-corner", "B/base-corner", "D/base-corner"),
				cutLists.of(sample.design()).blocks().stream().map(Block::label).toList());
	}

	@Test
	void insideCornersAreMitredIfTheBriefSaysSo() {
		SampleRoom sample = box();
		sample.rail = new RailBand(mm(840), mm(900), mm(20));
		sample.brief().setInside(InsideJoint.MITRE);
		for (Piece rail : of(sample, PieceKind.RAIL)) {
			assertEquals(Joint.INSIDE_MITRE, rail.start().joint());
			assertEquals(Joint.INSIDE_MITRE, rail.end().joint());
		}
	}
}
