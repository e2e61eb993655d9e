// SPDX-License-Identifier: EPL-2.0
package wainscribe.layout.exhaustive;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.List;
import java.util.Random;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

import wainscribe.layout.Objective;
import wainscribe.layout.RandomRoom;
import wainscribe.layout.RoomDesign;
import wainscribe.layout.Rooms;

/** The solver against an exhaustive search written from the definition alone, on thousands of small random rooms. */
class ExhaustiveSearchTest {

	/** Returns the nine terms with the excess in 0.1 mm and the shift of the gap in units. */
	static long[] terms(Objective objective) {
		return new long[] { objective.plain(), objective.splits(), objective.anchorsDropped(), objective.near(),
				objective.outOfBand(), objective.offModule(), objective.excess().multiply(BigDecimal.TEN).longValueExact(),
				objective.frames(), objective.gapShift().units() };
	}

	private static long[] check(RandomRoom random, boolean thorough, long seed) {
		Rooms rooms = random.next();
		RoomDesign design = Rooms.designer().withoutAdvice().design(rooms.home(), rooms.room());
		long[] expected = new ExhaustiveRoom(rooms.room(), design.brief(), thorough).solve();
		assertArrayEquals(expected, terms(design.layout().objective()), () -> "seed " + seed + ": " + random.last());
		return expected;
	}

	@ParameterizedTest
	@ValueSource(longs = { 1, 2, 3, 4 })
	void findsWhatTryingEverythingFinds(long seed) {
		long[] seen = new long[7];
		for (int i = 0; i < 600; i++) {
			long one = seed * 100_000 + i;
			long[] terms = check(new RandomRoom(new Random(one), 3), false, one);
			for (int t = 0; t < seen.length; t++) {
				seen[t] += terms[t] > 0 ? 1 : 0;
			}
		}
		for (int t = 0; t < seen.length; t++) {
			assertTrue(seen[t] >= 10, "term " + (t + 1) + " was above zero in " + seen[t] + " rooms only");
		}
	}

	@Test
	void findsWhatTryingEverythingFindsThoughNothingIsLeftOut() {
		for (int i = 0; i < 300; i++) {
			check(new RandomRoom(new Random(i), 1), true, i);
		}
	}

	@Test
	void findsWhatTryingEverythingFindsWithAWideCentre() {
		int centred = 0;
		for (int i = 0; i < 1200; i++) {
			RandomRoom random = new RandomRoom(new Random(i), 3);
			Rooms rooms = random.next().pattern("wide-centre");
			RoomDesign design = Rooms.designer().withoutAdvice().design(rooms.home(), rooms.room());
			long seed = i;
			assertArrayEquals(new ExhaustiveRoom(rooms.room(), design.brief(), false).solve(),
					terms(design.layout().objective()), () -> "seed " + seed + ": " + random.last());
			centred += design.layout().walls().stream().flatMap(wall -> wall.runs().stream())
					.anyMatch(run -> run.frames().size() > 2) ? 1 : 0;
		}
		assertTrue(centred >= 250, "only " + centred + " rooms have a wide centre between narrow frames");
	}

	@Test
	void theModuleIsPlacedWhereItServesBest() {
		long unit = 8000;
		List<long[]> widths = List.of(new long[] { 400 * unit, 1 }, new long[] { 420 * unit, 1 }, new long[] { 460 * unit, 1 });
		assertArrayEquals(new long[] { 1, 350 }, ExhaustiveRoom.module(widths),
				"derived: from 400 to 425 two are inside and 460 is 35.0 away; from 420 to 445 or 435 to 460 only one is");
	}
}
