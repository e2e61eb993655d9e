// SPDX-License-Identifier: EPL-2.0
package wainscribe.layout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

import wainscribe.layout.pattern.StripRhythm;
import wainscribe.layout.setout.SetOut;
import wainscribe.layout.setout.StripMarks;
import wainscribe.model.Box;
import wainscribe.model.Wall;
import wainscribe.model.length.Length;
import wainscribe.model.length.LengthUnit;

/** Battens under a rail, and grids of boards: equal fields, nothing on a plate, on through windows. */
class StripsTest {

	private static final Length KEPT = Length.ofMillimetres(13);

	private static Rooms battens() {
		return Rooms.millimetres().pattern("battens-under-rail").height("2400").rail("900");
	}

	private static Rooms grid() {
		return Rooms.millimetres().pattern("boards-and-rails").height("2400").rail("900");
	}

	private static List<StripOutline> upright(RunLayout run) {
		return run.strips().stream().filter(strip -> strip.kind().isUpright()).toList();
	}

	private static List<Double> lefts(RoomLayout layout) {
		return layout.strips().filter(strip -> strip.kind().isUpright()).map(strip -> strip.x().approximateMillimetres()).toList();
	}

	/** Equal spacing, common practice: (wall - n x batten) / (n + 1). */
	@Test
	void battensShareTheWallInEqualFields() {
		RoomLayout layout = battens().wall("A", "2840").layout();
		assertEquals(List.of(420.0, 904.0, 1388.0, 1872.0, 2356.0), lefts(layout), "derived: (2840 - 5 x 64) / 6 = 420");
		StripOutline first = layout.strips().findFirst().orElseThrow();
		assertEquals("A-L1", first.id());
		assertEquals(StripKind.BATTEN, first.kind());
		assertEquals(Length.ofMillimetres(140), first.y(), "stands on the base");
		assertEquals(Length.ofMillimetres(840), first.top(), "ends under the rail");
		assertEquals(Length.ofMillimetres(420), layout.gap());
		assertEquals(0, layout.frames().count());
		assertTrue(layout.proved() && layout.infeasible().isEmpty());
	}

	@Test
	void anOutletIsNotCoveredByABatten() {
		RoomLayout layout = battens().wall("A", "2840").outlet("910", "300", "70", "115").layout();
		assertEquals(0, layout.objective().plain() + layout.objective().splits());
		assertTrue(layout.strips().count() != 5, "five battens would put the second one on the plate");
	}

	@Test
	void battensGoOnUnderAWindowFromEdgeToEdgeOfItsCasing() {
		RoomLayout layout = battens().wall("A", "3000").window("1060", "560", "880", "1000", "60").layout();
		RunLayout under = layout.walls().getFirst().runs().stream().filter(run -> run.tier() == Tier.UNDER).findFirst().orElseThrow();
		List<StripOutline> strips = upright(under);
		assertEquals(Length.ofMillimetres(1000), strips.getFirst().x());
		assertEquals(Length.ofMillimetres(2000), strips.getLast().right());
		assertEquals(Length.ofMillimetres(500), strips.getFirst().top(), "ends under the apron");
		assertEquals("A-B1", strips.getFirst().id());
	}

	@Test
	void aWindowAboveTheRailChangesNothing() {
		assertEquals(lefts(battens().wall("A", "2840").layout()),
				lefts(battens().wall("A", "2840").window("900", "1000", "700", "900", "60").layout()));
	}

	@Test
	void aGridHasBoardsInTheCornersAndSquareFields() {
		RoomLayout layout = grid().wall("A", "2610").layout();
		RunLayout run = layout.walls().getFirst().runs().getFirst();
		List<StripOutline> stiles = upright(run);
		assertEquals(Length.ZERO, stiles.getFirst().x());
		assertEquals(Length.ofMillimetres(2610), stiles.getLast().right());
		assertEquals(Length.ofMillimetres(318), layout.gapY(), "derived: two rows, (700 - 64) / 2");
		List<StripOutline> rails = run.strips().stream().filter(strip -> strip.kind() == StripKind.RAIL).toList();
		assertEquals(stiles.size() - 1, rails.size(), "one between every two stiles");
		assertEquals(Length.ofMillimetres(140 + 318), rails.getFirst().y());
		assertEquals(stiles.getFirst().right(), rails.getFirst().x());
		assertEquals("A-LR1", rails.getFirst().id());
		double width = rails.getFirst().width().approximateMillimetres();
		assertTrue(width >= 0.8 * 318 && width <= 1.25 * 318, "reads as square: " + width);
	}

	@Test
	void anOutletAtMidHeightMakesAnotherNumberOfRows() {
		assertEquals(Length.ofMillimetres(318), grid().wall("A", "3000").layout().gapY());
		RoomLayout layout = grid().wall("A", "3000").outlet("700", "440", "70", "115").layout();
		assertEquals(new Length(8000L * 572 / 3), layout.gapY(), "derived: three rows, (700 - 2 x 64) / 3; two put a rail on the plate");
		assertEquals(0, layout.objective().splits());
	}

	@ParameterizedTest
	@ValueSource(strings = { "battens-under-rail", "boards-and-rails" })
	void fieldsAreEqualAndMakeUpTheRunAndNothingLiesOnAPlate(String pattern) {
		int looked = 0;
		for (int i = 0; i < 400; i++) {
			Rooms rooms = new RandomRoom(new Random(i), 3).next().pattern(pattern);
			RoomLayout layout = rooms.layoutWithoutAdvice();
			for (WallLayout wall : layout.walls()) {
				looked += (int) wall.runs().stream().filter(run -> isShared(run, layout.profile().face())).count();
				wall.strips().forEach(strip -> assertClear(wall.wall(), strip));
			}
			assertEquals(layout.walls(), rooms.layoutWithoutAdvice().walls(), "the same room always gives the same layout");
		}
		assertTrue(looked >= 300, "looked at " + looked);
	}

	private static boolean isShared(RunLayout run, Length face) {
		List<StripOutline> upright = upright(run);
		if (upright.isEmpty()) {
			return false;
		}
		long least = Long.MAX_VALUE;
		long most = 0;
		Length x = run.x0();
		for (StripOutline strip : upright) {
			assertEquals(face, strip.width());
			long field = strip.x().minus(x).units();
			boolean board = field == 0 && strip == upright.getFirst();
			least = board ? least : Math.min(least, field);
			most = Math.max(most, field);
			x = strip.right();
		}
		long last = run.x1().minus(x).units();
		least = last == 0 ? least : Math.min(least, last);
		assertTrue(Math.max(most, last) - least <= 1, "fields differ by the last unit at most");
		return true;
	}

	private static void assertClear(Wall wall, StripOutline strip) {
		for (Box box : wall.getBoxes()) {
			boolean apart = !strip.x().isLessThan(box.getX().plus(box.getWidth()).plus(KEPT))
					|| !strip.right().isMoreThan(box.getX().minus(KEPT))
					|| !strip.y().isLessThan(box.getY().plus(box.getHeight()).plus(KEPT))
					|| !strip.top().isMoreThan(box.getY().minus(KEPT));
			assertTrue(apart, strip.id() + " comes too near a plate");
		}
	}

	@Test
	void aGapAskedForIsTheFieldAimedAt() {
		RoomLayout layout = battens().gap("250").wall("A", "3000").layout();
		assertEquals(new Length(8000L * 2424 / 10), layout.gap(), "derived: 9 battens leave (3000 - 576) / 10 = 242.4; 8 leave 276.4");
		assertTrue(layout.infeasible().isEmpty());
		PlainStretch wide = battens().gap("5000").wall("A", "3000").layout().infeasible().getFirst();
		assertEquals("No stretch leaves 5000 mm between strips. The widest field is 1468 mm.", wide.reason() + ' ' + wide.nearest());
		RoomLayout narrow = battens().gap("80").wall("A", "2840").layout();
		assertTrue(narrow.infeasible().isEmpty());
		assertEquals(Length.ofMillimetres(420), narrow.gap(), "a gap for frames says nothing about strips");
		assertEquals("A gap of 80 mm is too narrow between strips, which stand 100 mm or more apart; the room decides.",
				narrow.walls().getFirst().runs().getFirst().reason());
	}

	@Test
	void aMouldingThatWasDecidedIsKept() {
		assertEquals(Length.ofMillimetres(64), battens().wall("A", "3000").layout().profile().face());
		assertEquals(Length.ofMillimetres(45), battens().brief(brief -> brief.setFace(Length.ofMillimetres(45))).wall("A", "3000")
				.layout().profile().face());
	}

	@Test
	void battensClimbAStairPlumb() {
		RoomLayout layout = battens().wall("A", "3000").shape(wall -> {
			wall.setHeight(Length.ofMillimetres(4000));
			wall.setFloorRight(Length.ofMillimetres(1500));
		}).layout();
		StripOutline last = layout.strips().reduce((one, other) -> other).orElseThrow();
		assertTrue(last.isRaked());
		assertEquals(last.rise(), last.riseTop());
		assertEquals(Length.ofMillimetres(32), last.rise(), "derived: 64 wide on a pitch of 1 in 2");
	}

	@Test
	void setOutMarksEveryEdgeFromTheExactPlace() {
		RoomLayout layout = Rooms.inches().pattern("battens-under-rail").height("96").rail("36").wall("A", "100").layout();
		List<StripMarks> marks = SetOut.of(layout.walls().getFirst(), LengthUnit.INCH).strips();
		List<StripOutline> strips = layout.strips().toList();
		assertEquals(strips.size(), marks.size());
		assertFalse(marks.isEmpty());
		for (int i = 0; i < marks.size(); i++) {
			assertEquals(strips.get(i).x(), marks.get(i).left().exact());
			assertEquals(strips.get(i).right().roundedTo(LengthUnit.INCH.tapeMark()), marks.get(i).right().onTape());
		}
	}

	@Test
	void aWallOfSixtyMetresTakesStripsAlongItsLength() {
		Rooms rooms = battens().wall("A", "60000");
		for (int x = 300; x < 59000; x += 1700) {
			rooms.outlet(String.valueOf(x), "300", "70", "115");
		}
		assertEquals(0, rooms.layoutWithoutAdvice().objective().plain());
		assertEquals(0, rooms.pattern("boards-and-rails").layoutWithoutAdvice().objective().plain());
	}

	@Test
	void refusesRowsThatAreNone() {
		assertThrows(IllegalArgumentException.class, () -> new StripRhythm(true, 0, 2));
		assertThrows(IllegalArgumentException.class, () -> new StripRhythm(true, 3, 2));
		assertThrows(IllegalArgumentException.class, () -> new StripRhythm(false, 1, 9));
	}
}
