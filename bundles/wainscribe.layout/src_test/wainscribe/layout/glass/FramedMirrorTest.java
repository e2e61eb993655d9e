// SPDX-License-Identifier: EPL-2.0
package wainscribe.layout.glass;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;

import org.junit.jupiter.api.Test;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.LongRange;
import wainscribe.layout.FrameOutline;
import wainscribe.layout.PlainStretch;
import wainscribe.layout.RandomRoom;
import wainscribe.layout.RoomDesign;
import wainscribe.layout.RoomLayout;
import wainscribe.layout.Rooms;
import wainscribe.layout.WallLayout;
import wainscribe.model.Fixture;
import wainscribe.model.FixtureType;
import wainscribe.model.Wall;
import wainscribe.model.length.Length;
import wainscribe.model.outline.Outline;

/**
 * A mirror that gets a frame of moulding blocks with that frame. Expected values are derived: with a moulding of 45 mm that laps
 * 10 mm over the glass the outer edge is 35 mm outside of it.
 */
class FramedMirrorTest {

	private static final int OUTSIDE = 45 - 10;

	private static Rooms wall(String height, Boolean framed) {
		return Rooms.millimetres().height("2400").rail("900").gap("80").brief(brief -> {
			brief.setFace(Length.ofMillimetres(45));
			brief.setGlassLap(Length.ofMillimetres(10));
		}).wall("A", "4000").fixture(FixtureType.MIRROR, "1600", "600", "800", height, mirror -> mirror.setFramed(framed));
	}

	private static List<Length> ends(RoomLayout layout) {
		return List.of(layout.walls().get(0).runs().get(0).x1(), layout.walls().get(0).runs().get(1).x0());
	}

	private static Length mm(long millimetres) {
		return Length.ofMillimetres(millimetres);
	}

	@Test
	void runsEndAtTheOuterEdgeOfTheFrame() {
		assertEquals(List.of(mm(1600 - OUTSIDE), mm(2400 + OUTSIDE)), ends(wall("1200", true).layout()));
		assertEquals(List.of(mm(1600), mm(2400)), ends(wall("1200", null).layout()));
		assertEquals(List.of(mm(1600), mm(2400)), ends(wall("1200", false).layout()));
	}

	@Test
	void framesKeepTheGapFromIt() {
		RoomLayout layout = wall("1200", true).layout();
		assertEquals(mm(1600 - OUTSIDE - 80), layout.walls().get(0).runs().get(0).frames().getLast().right());
		assertEquals(mm(2400 + OUTSIDE + 80), layout.walls().get(0).runs().get(1).frames().getFirst().x());
	}

	@Test
	void onlyTheFrameOfAMirrorOverTheTierReachesIntoIt() {
		Rooms above = Rooms.millimetres().height("2400").rail("900").gap("80").brief(brief -> brief.setFace(mm(45)))
				.wall("A", "4000").fixture(FixtureType.MIRROR, "1600", "850", "800", "900");
		assertEquals(1, above.layout().walls().get(0).runs().size(), "the glass begins at 850, the tier ends at 840");
		above.room().getWalls().get(0).getFixtures().get(0).setFramed(true);
		assertEquals(2, above.layout().walls().get(0).runs().size(), "the moulding begins at 815");
	}

	@Test
	void theRailStopsAtTheFrameAndSoMissesWhatIsBesideTheGlass() {
		Rooms rooms = wall("1200", null).outlet("2405", "850", "20", "115");
		assertEquals("The rail from 840 mm to 900 mm hits the outlet at 2405 mm.", rooms.layout().infeasible().getFirst().reason());
		rooms.room().getWalls().get(0).getFixtures().get(0).setFramed(true);
		assertTrue(rooms.layout().infeasible().stream().map(PlainStretch::reason).anyMatch(reason -> reason.contains("outlet")),
				"to 2435, and the plate asks for 13 beyond 2425");
		rooms.room().getBrief().setFace(mm(50));
		assertFalse(rooms.layout().infeasible().stream().map(PlainStretch::reason).anyMatch(reason -> reason.contains("outlet")),
				"to 2440");
	}

	@Test
	void aMouldingThatLiesWhollyOnTheGlassAddsNothing() {
		Rooms rooms = wall("1200", true).brief(brief -> brief.setGlassLap(mm(60)));
		assertEquals(List.of(mm(1600), mm(2400)), ends(rooms.layout()));
	}

	@Property(tries = 200)
	void noFrameComesNearerThanTheGap(@ForAll @LongRange(min = 0, max = 1_000_000) long seed) {
		Random random = new Random(seed);
		Rooms rooms = new RandomRoom(random, 2, 4000).next();
		rooms.fixture(FixtureType.MIRROR, random.nextInt(3500) + "mm", random.nextInt(1200) + "mm", 200 + random.nextInt(900) + "mm",
				200 + random.nextInt(900) + "mm", mirror -> mirror.setFramed(true));
		RoomDesign design = Rooms.designer().withoutAdvice().design(rooms.home(), rooms.room());
		Wall wall = rooms.room().getWalls().getLast();
		Fixture mirror = wall.getFixtures().getLast();
		Outline whole = GlassFrame.of(rooms.home(), rooms.room(), design.brief(), mirror).orElseThrow().outer();
		WallLayout layout = design.layout().of(wall).orElseThrow();
		Length gap = design.layout().gap();
		Length gapY = design.layout().gapY();
		Outline kept = new Outline(whole.x0().minus(gap), whole.y0().minus(gapY), whole.x1().plus(gap), whole.y1().plus(gapY));
		layout.frames().forEach(frame -> assertFalse(outline(frame).overlaps(whole), frame::toString));
		layout.runs().stream().filter(run -> run.y0().isLessThan(whole.y1()) && whole.y0().isLessThan(run.y1()))
				.flatMap(run -> run.frames().stream()).forEach(frame -> assertFalse(outline(frame).x0().isLessThan(kept.x1())
						&& kept.x0().isLessThan(outline(frame).x1()), frame::toString));
	}

	private static Outline outline(FrameOutline frame) {
		return Outline.ofSize(frame.x(), frame.y(), frame.width(), frame.height());
	}
}
