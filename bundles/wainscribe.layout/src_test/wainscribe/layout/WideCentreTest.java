// SPDX-License-Identifier: EPL-2.0
package wainscribe.layout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;

import org.junit.jupiter.api.Test;

import wainscribe.layout.pattern.Rhythm;
import wainscribe.layout.setout.RunMarks;
import wainscribe.layout.setout.SetOut;
import wainscribe.model.length.Length;
import wainscribe.model.length.LengthUnit;

/** One wide frame in the middle of every run between equal narrow ones, 1 : 2 : 1. */
class WideCentreTest {

	private static List<FrameOutline> frames(RunLayout run) {
		return run.frames().stream().filter(frame -> frame.role() == FrameRole.RUN).toList();
	}

	@Test
	void theCentreIsTwiceAsWide() {
		RoomLayout layout = Rooms.millimetres().pattern("wide-centre").rail("900").gap("80").wall("A", "2320").layout();
		List<FrameOutline> frames = layout.frames().toList();
		assertEquals(List.of(500, 1000, 500), frames.stream().map(frame -> (int) frame.width().units() / 8000).toList(),
				"derived: (2320 - 4 x 80) / (1 + 2 + 1) = 500");
		assertEquals(Length.ofMillimetres(1160), frames.get(1).x().plus(frames.get(1).width().dividedBy(2)),
				"the middle of the wall");
		assertTrue(layout.proved());
	}

	@Test
	void everyRunIsItsOwnMirrorImageWithEqualGaps() {
		int looked = 0;
		for (int i = 0; i < 400; i++) {
			RoomLayout layout = new RandomRoom(new Random(i), 3).next().pattern("wide-centre").layoutWithoutAdvice();
			for (RunLayout run : layout.walls().stream().flatMap(wall -> wall.runs().stream()).toList()) {
				List<FrameOutline> frames = frames(run);
				if (frames.size() < 3) {
					continue;
				}
				looked++;
				assertEquals(1, frames.size() % 2);
				Length x = run.x0();
				for (int f = 0; f < frames.size(); f++) {
					assertEquals(layout.gap(), frames.get(f).x().minus(x));
					assertEquals(frames.get(f).width(), frames.get(frames.size() - 1 - f).width());
					x = frames.get(f).right();
				}
				assertEquals(layout.gap(), run.x1().minus(x), "the gaps and widths make up the run exactly");
				Length narrow = frames.getFirst().width();
				Length rest = frames.get(frames.size() / 2).width().minus(narrow.times(2));
				assertTrue(rest.signum() >= 0 && rest.units() <= frames.size(), "the centre has two widths and what is left over");
			}
		}
		assertTrue(looked >= 100, "looked at " + looked);
	}

	@Test
	void aPlateOnTheStripOfTheCentreIsAvoided() {
		Rooms rooms = Rooms.millimetres().pattern("wide-centre").rail("900").gap("80").wall("A", "2320").outlet("630", "300", "70", "114");
		RoomLayout layout = rooms.layout();
		assertEquals(5, layout.frames().count(), "derived: of three a strip would lie at 660 on the plate, from 630 to 700; of five the "
				+ "second stands from 466 2/3 to 773 1/3 and holds it in its field");
		assertEquals(0, layout.objective().plain());
	}

	@Test
	void setOutCutsTwoWidthsAndSaysTheGapThatIsLeft() {
		RoomLayout layout = Rooms.inches().pattern("wide-centre").rail("36").gap("3").wall("A", "100").layout();
		RunMarks marks = SetOut.of(layout.walls().get(0), LengthUnit.INCH).runs().get(0);
		assertEquals(3, marks.frames().size());
		assertEquals(Length.ofInches(22, 1), marks.cutWidth(marks.frames().get(0)).orElseThrow(), "derived: (100 - 4 x 3) / 4");
		assertEquals(Length.ofInches(44, 1), marks.cutWidth(marks.frames().get(1)).orElseThrow());
		assertEquals(Length.ofInches(3, 1), marks.gapLeft().orElseThrow());
	}

	@Test
	void refusesProportionsThatAreNone() {
		assertThrows(IllegalArgumentException.class, () -> new Rhythm(0));
		assertThrows(IllegalArgumentException.class, () -> new Rhythm(9));
	}
}
