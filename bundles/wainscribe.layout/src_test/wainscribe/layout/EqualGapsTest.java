// SPDX-License-Identifier: EPL-2.0
package wainscribe.layout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import wainscribe.layout.setout.FrameMarks;
import wainscribe.layout.setout.RunMarks;
import wainscribe.layout.setout.SetOut;
import wainscribe.model.length.Length;
import wainscribe.model.length.LengthParser;
import wainscribe.model.length.LengthUnit;

/**
 * Worked examples of equal gaps.
 * <p>
 * 60 in, 3 frames, 3 in: published worked example, home-building magazine, wall-frame how-to, step 3 (frame 16 in). All others
 * are derived: exact arithmetic of width = (run - gap x (n + 1)) / n, edges from the datum rounded once, halves up.
 */
class EqualGapsTest {

	private static RoomLayout wall(Rooms rooms, String length, String gap, int frames) {
		Length run = rooms.length(length);
		Length width = run.minus(rooms.length(gap).times(frames + 1L)).dividedBy(frames);
		return rooms.height("2400mm").rail("900mm").gap(gap).wall("A", length).brief(brief -> {
			brief.setFrameWidthMin(width.minus(Length.ofMillimetres(1)));
			brief.setFrameWidthMax(width.plus(Length.ofMillimetres(1)));
		}).layout();
	}

	private static Rooms in(String unit) {
		return "in".equals(unit) ? Rooms.inches() : Rooms.millimetres();
	}

	@Test
	void threeFramesInSixtyInchesAreSixteenWide() {
		RoomLayout layout = wall(Rooms.inches(), "60", "3", 3);
		assertEquals(List.of(Length.ofInches(16), Length.ofInches(16), Length.ofInches(16)),
				layout.frames().map(FrameOutline::width).toList());
		assertEquals(List.of(Length.ofInches(3), Length.ofInches(22), Length.ofInches(41)),
				layout.frames().map(FrameOutline::x).toList());
	}

	@ParameterizedTest
	@CsvSource(delimiter = '|', value = { "in | 60 | 3 | 3 | 3; 19; 22; 38; 41; 57",
			"in | 91 3/8 | 4 | 3 1/4 | 3 1/4; 22 1/16; 25 5/16; 44 1/16; 47 5/16; 66 1/8; 69 3/8; 88 1/8",
			"in | 100 | 3 | 3 | 3; 32 5/16; 35 5/16; 64 11/16; 67 11/16; 97",
			"in | 37 1/8 | 1 | 4 | 4; 33 1/8",
			"in | 88 5/16 | 5 | 2 5/8 | 2 5/8; 17 1/8; 19 3/4; 34 1/4; 36 7/8; 51 7/16; 54 1/16; 68 9/16; 71 3/16; 85 11/16",
			"in | 96 | 4 | 81.28mm | 3 3/16; 23 3/16; 26 3/8; 46 3/8; 49 5/8; 69 5/8; 72 13/16; 92 13/16",
			"mm | 3000 | 4 | 80 | 80; 730; 810; 1460; 1540; 2190; 2270; 2920",
			"mm | 2438.4 | 3 | 76.2 | 76; 787; 864; 1575; 1651; 2362",
			"mm | 3652 | 6 | 75 | 75; 596; 671; 1192; 1267; 1789; 1864; 2385; 2460; 2981; 3056; 3577" })
	void marksAreRoundedOnceFromTheDatum(String unit, String run, int frames, String gap, String marks) {
		LengthUnit units = LengthUnit.ofSymbol(unit);
		RoomLayout layout = wall(in(unit), run, gap, frames);
		LengthParser parser = new LengthParser(units);
		RunMarks set = SetOut.of(layout.walls().get(0), units).runs().get(0);
		List<Length> onTape = new ArrayList<>();
		for (FrameMarks frame : set.frames()) {
			onTape.add(frame.left().onTape());
			onTape.add(frame.right().onTape());
		}
		assertEquals(java.util.Arrays.stream(marks.split(";")).map(String::strip).map(parser::parse).toList(), onTape);
		assertEquals(frames, set.frames().size());
	}

	@Test
	void theRestOfACutWidthIsShownInTheGap() {
		RoomLayout layout = wall(Rooms.inches(), "100", "3", 3);
		RunMarks marks = SetOut.of(layout.walls().get(0), LengthUnit.INCH).runs().get(0);
		assertEquals(Length.ofInches(29 * 16 + 5, 16), marks.cutWidth().orElseThrow(), "derived: 29 1/3 in to the nearest 1/16");
		assertEquals(Length.ofInches(12 * 16 + 1, 64), marks.gapLeft().orElseThrow(), "derived: (100 - 3 x 29 5/16) / 4");
	}

	@Test
	void theRestOfADivisionGoesIntoWidthsNeverIntoGaps() {
		RoomLayout layout = wall(Rooms.inches(), "143 1/2", "2 3/4", 7);
		List<FrameOutline> frames = layout.frames().toList();
		assertEquals(7, frames.size());
		assertEquals(Length.ofInches(11, 4), frames.get(0).x());
		for (int i = 1; i < 7; i++) {
			assertEquals(Length.ofInches(11, 4), frames.get(i).x().minus(frames.get(i - 1).right()));
			assertTrue(frames.get(0).width().minus(frames.get(i).width()).units() <= 1);
		}
		assertEquals(Length.ofInches(11, 4), Length.ofInches(287, 2).minus(frames.get(6).right()));
	}
}
