// SPDX-License-Identifier: EPL-2.0
package wainscribe.layout.exhaustive;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import java.util.Random;

import org.junit.jupiter.api.Test;

import wainscribe.layout.Alternative;
import wainscribe.layout.FrameOutline;
import wainscribe.layout.Objective;
import wainscribe.layout.RandomRoom;
import wainscribe.layout.RoomDesign;
import wainscribe.layout.Rooms;
import wainscribe.model.length.Length;

/** Alternatives against an exhaustive search that is told how many frames to use. */
class AlternativesTest {

	@Test
	void theBestWithFewerAndWithMoreFramesAreTheBest() {
		int seen = 0;
		for (int seed = 0; seed < 150; seed++) {
			RandomRoom random = new RandomRoom(new Random(seed), 1);
			Rooms rooms = random.next();
			RoomDesign design = Rooms.designer().design(rooms.home(), rooms.room());
			Objective best = design.layout().objective();
			if (best.plain() == 0 && best.splits() == 0 && best.frames() > 0) {
				check(rooms, design, 0, best.frames() - 1, "fewer", random.last());
				check(rooms, design, best.frames() + 1, 1000, "more", random.last());
				seen++;
			}
		}
		assertTrue(seen > 40, "only " + seen + " rooms had frames and no trouble");
	}

	private static void check(Rooms rooms, RoomDesign design, int least, int most, String word, String room) {
		Objective best = design.layout().objective();
		long[] expected = new ExhaustiveRoom(rooms.room(), design.brief(), true).between(least, most);
		boolean wanted = expected != null && expected[0] == 0 && expected[1] == 0
				&& (word.equals("fewer") || expected[6] < ExhaustiveSearchTest.terms(best)[6]);
		Optional<Alternative> found = design.layout().alternatives().stream()
				.filter(other -> other.objective().frames() >= least && other.objective().frames() <= most)
				.filter(other -> other.sentence().contains(" instead of " + best.frames() + " frame")).findFirst();
		if (wanted) {
			assertEquals(java.util.Arrays.toString(expected), java.util.Arrays.toString(
					ExhaustiveSearchTest.terms(found.orElseThrow(() -> new AssertionError(word + ": " + room)).objective())), room);
		}
	}

	@Test
	void theUsualGapIsShownWhereAnotherWasChosen() {
		RoomDesign design = null;
		for (int seed = 0; design == null || design.layout().gap().equals(Length.ofMillimetres(80)); seed++) {
			Rooms rooms = Rooms.millimetres().height("2400").rail("900").wall("A", String.valueOf(2000 + 37 * seed)).wall("B", "3111");
			design = Rooms.designer().design(rooms.home(), rooms.room());
		}
		Alternative usual = design.layout().alternatives().stream()
				.filter(other -> other.sentence().startsWith("The usual gap of 80 mm")).findFirst().orElseThrow();
		assertEquals(Length.ofMillimetres(80), usual.gap());
		assertEquals(Length.ZERO, usual.objective().gapShift());
		assertTrue(usual.walls().stream().allMatch(wall -> wall.frames().map(FrameOutline::x).findFirst().orElseThrow().equals(usual.gap())));
		assertTrue(design.layout().objective().compareTo(usual.objective()) < 0);
	}
}
