// SPDX-License-Identifier: EPL-2.0
package wainscribe.layout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;

import org.junit.jupiter.api.Test;

import wainscribe.model.ExistingTrim;
import wainscribe.model.TrimType;
import wainscribe.model.WainscribeFactory;
import wainscribe.model.length.Length;

/** Patterns and heights as a design shows them. Expected values are derived from the definition of the layout problem. */
class PatternRoomDesignerTest {

	private static Rooms room(String pattern) {
		return Rooms.millimetres().height("2600").rail("900").gap("80").pattern(pattern).wall("A", "3000");
	}

	private static ExistingTrim trim(TrimType type, int y, int face, Boolean keep) {
		ExistingTrim trim = WainscribeFactory.eINSTANCE.createExistingTrim();
		trim.setType(type);
		trim.setY(Length.ofMillimetres(y));
		trim.setHeight(Length.ofMillimetres(face));
		trim.setKeep(keep);
		return trim;
	}

	private static Length y(RoomLayout layout) {
		return layout.frames().findFirst().orElseThrow().y();
	}

	private static Length top(RoomLayout layout) {
		return layout.frames().map(FrameOutline::top).max(Length::compareTo).orElseThrow();
	}

	@Test
	void thePatternSaysWhereFramesAndRailsAre() {
		RoomLayout under = room("frames-under-rail").layout();
		assertEquals(new RailBand(Length.ofMillimetres(840), Length.ofMillimetres(900), Length.ofMillimetres(20)), under.railBand());
		assertEquals(Length.ofMillimetres(220), y(under));
		assertEquals(Length.ofMillimetres(760), top(under));
		RoomLayout two = room("frames-two-tier").layout();
		assertEquals(Length.ofMillimetres(2520), top(two));
		assertTrue(two.frames().anyMatch(frame -> frame.y().equals(Length.ofMillimetres(980))));
		RoomLayout full = room("frames-to-ceiling").layout();
		assertTrue(full.rail().isEmpty());
		assertTrue(full.frames().allMatch(frame -> frame.height().equals(Length.ofMillimetres(2600 - 140 - 160))));
		RoomLayout rail = room("rail-and-base").layout();
		assertTrue(rail.rail().isPresent());
		assertEquals(0, rail.frames().count());
		assertTrue(room("none").layout().rail().isEmpty());
	}

	@Test
	void anUnknownPatternIsNamedWithThoseThereAre() {
		IllegalArgumentException refusal = assertThrows(IllegalArgumentException.class, () -> room("stripes").layout());
		assertTrue(refusal.getMessage().startsWith("pattern \"stripes\": expected one of frames-under-rail, "), refusal.getMessage());
	}

	@Test
	void framesStayLevelOverTheHighestBaseAndUnderTheLowestCrownThatStay() {
		Rooms rooms = room("frames-to-ceiling").shape(wall -> {
			wall.getTrims().add(trim(TrimType.BASE, 0, 184, null));
			wall.getTrims().add(trim(TrimType.CROWN, 2500, 90, Boolean.TRUE));
		}).wall("B", "2000").shape(wall -> {
			wall.getTrims().add(trim(TrimType.BASE, 0, 100, Boolean.TRUE));
			wall.getTrims().add(trim(TrimType.BASE, 0, 300, Boolean.FALSE));
		});
		RoomLayout layout = rooms.layout();
		assertTrue(layout.frames().allMatch(frame -> frame.y().equals(Length.ofMillimetres(264))), "184 and a gap; 300 goes");
		assertTrue(layout.frames().allMatch(frame -> frame.top().equals(Length.ofMillimetres(2500 - 80))));
	}

	@Test
	void equallyGoodLayoutsPutFewerFramesOnTheEarlierWall() {
		RoomLayout layout = Rooms.millimetres().height("2400").rail("900").gap("80").wall("A", "1000").wall("B", "1000").layout();
		List<Long> counts = layout.walls().stream().map(wall -> wall.frames().count()).toList();
		assertEquals(List.of(1L, 1L), counts);
		assertTrue(layout.walls().stream().flatMap(WallLayout::frames).map(FrameOutline::id).toList().equals(List.of("A-L1", "B-L1")));
	}

	@Test
	void adviceChangesNothingInTheLayout() {
		Rooms rooms = room("frames-two-tier").outlet("1400", "250", "70", "115").window("700", "1100", "900", "1000", "60");
		assertEquals(rooms.layout().walls().get(0).runs(), rooms.layoutWithoutAdvice().walls().get(0).runs());
		assertTrue(rooms.layoutWithoutAdvice().alternatives().isEmpty());
		assertTrue(rooms.layout().proved());
	}
}
