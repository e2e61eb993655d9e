// SPDX-License-Identifier: EPL-2.0
package wainscribe.layout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import wainscribe.model.length.Length;

/** Frames along a stair. Expected sizes are derived: geometry on whole-number slopes, the inset square to every side. */
class RakedFramesTest {

	@ParameterizedTest
	@CsvSource({ "900, 1200, 600, 80, 1040, 400, 780", "600, 800, 500, 60, 680, 350, 510", "500, 1200, 600, 72, 1056, 444, 440",
			"800, 1500, 640, 75, 1350, 470, 720", "700, 2400, 700, 96, 2208, 500, 644", "800, 840, 600, 63, 714, 426, 680" })
	void oneFrameKeepsTheGapSquareToEverySide(int climb, int length, int band, int gap, int width, int side, int rise) {
		RoomLayout layout = Rooms.millimetres().height("3000").wall("A", String.valueOf(length)).gap(String.valueOf(gap))
				.shape(wall -> wall.setFloorRight(Length.ofMillimetres(climb))).brief(brief -> {
					brief.setBase(Length.ofMillimetres(140));
					brief.setRail(Length.ofMillimetres(140 + band + 60));
					brief.setFrameWidthMin(Length.ofMillimetres(width - 1));
					brief.setFrameWidthMax(Length.ofMillimetres(width + 1));
				}).layout();
		FrameOutline frame = layout.frames().findFirst().orElseThrow();
		assertEquals(1, layout.frames().count());
		assertEquals(Length.ofMillimetres(width), frame.width());
		assertEquals(Length.ofMillimetres(side), frame.height());
		assertEquals(Length.ofMillimetres(rise), frame.rise());
		assertEquals(frame.rise(), frame.riseTop());
		assertTrue(frame.isRaked());
	}

	@Test
	void theGapStaysSquareWhereTheSlopeIsNoWholeNumber() {
		RoomLayout layout = Rooms.millimetres().height("2600").wall("A", "3100").gap("77").rail("950")
				.shape(wall -> wall.setFloorRight(Length.ofMillimetres(1970))).layout();
		double slope = 1970.0 / 3100;
		assertTrue(layout.frames().count() > 1);
		layout.frames().forEach(frame -> {
			double floor = slope * frame.x().approximateMillimetres();
			double plumb = frame.y().approximateMillimetres() - floor - 140;
			assertEquals(77, plumb / Math.hypot(1, slope), 0.001);
			double above = floor + 950 - 60 - frame.top().approximateMillimetres();
			assertEquals(77, above / Math.hypot(1, slope), 0.001);
			assertEquals(slope * frame.width().approximateMillimetres(), frame.rise().approximateMillimetres(), 0.001);
		});
	}

	@Test
	void framesUnderASlopedCeilingFollowIt() {
		RoomLayout layout = Rooms.millimetres().height("2400").pattern("frames-to-ceiling").wall("A", "2000")
				.shape(wall -> wall.setHeightRight(Length.ofMillimetres(1400))).gap("80").layout();
		assertTrue(layout.frames().count() > 0);
		layout.frames().forEach(frame -> {
			assertEquals(Length.ZERO, frame.rise());
			assertEquals(-0.5 * frame.width().approximateMillimetres(), frame.riseTop().approximateMillimetres(), 0.001);
			assertEquals(Length.ofMillimetres(220), frame.y());
		});
	}

	@Test
	void aWallThatSlopesToAPointIsFramedWhileItIsHighEnough() {
		RoomLayout layout = Rooms.millimetres().height("2400").pattern("frames-to-ceiling").wall("A", "3000")
				.shape(wall -> wall.setHeightRight(Length.ZERO)).gap("80").layout();
		assertTrue(layout.infeasible().isEmpty(), () -> layout.infeasible().toString());
		assertTrue(layout.frames().count() > 0);
		layout.frames().forEach(frame -> {
			Length right = frame.height().plus(frame.riseTop());
			assertTrue(right.compareTo(Length.ofMillimetres(200)) >= 0, frame.toString());
		});
		RunLayout last = layout.walls().get(0).runs().get(layout.walls().get(0).runs().size() - 1);
		assertEquals("Too low for a frame under the slope.", last.reason());
		assertEquals(Length.ofMillimetres(3000), last.x1());
	}

	@Test
	void anOutletOnAStairIsMeasuredFromTheNosingLine() {
		Rooms rooms = Rooms.millimetres().height("2600").wall("A", "2400").gap("80").rail("950")
				.shape(wall -> wall.setFloorRight(Length.ofMillimetres(1500)));
		java.util.List<RunLayout> free = rooms.layout().walls().get(0).runs();
		java.util.List<FrameOutline> frames = free.get(0).frames();
		Length edge = frames.get(frames.size() - 1).right().minus(Length.ofMillimetres(30));
		rooms.outlet(edge.toMillimetres().toPlainString() + "mm", "450", "70", "115");
		assertNotEquals(free, rooms.layout().walls().get(0).runs(),
				"450 above the nosing line it stands across a stile; above the floor at the left end it would be below the tier");
	}
}
