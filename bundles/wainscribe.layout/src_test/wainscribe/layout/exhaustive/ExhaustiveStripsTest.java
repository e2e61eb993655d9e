// SPDX-License-Identifier: EPL-2.0
package wainscribe.layout.exhaustive;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import wainscribe.layout.RandomRoom;
import wainscribe.layout.RoomDesign;
import wainscribe.layout.Rooms;

/** Battens and grids against an exhaustive search written from the definition alone, on small random rooms. */
class ExhaustiveStripsTest {

	@ParameterizedTest
	@CsvSource({ "battens-under-rail,1", "battens-under-rail,2", "boards-and-rails,3", "boards-and-rails,4" })
	void findsWhatTryingEverythingFinds(String pattern, long seed) {
		long[] seen = new long[7];
		for (int i = 0; i < 600; i++) {
			long one = seed * 100_000 + i;
			RandomRoom random = new RandomRoom(new Random(one), 3, 1800);
			Rooms rooms = random.next().pattern(pattern);
			if (i % 4 == 0) {
				rooms.gap(100 + i % 300 + "mm");
			}
			RoomDesign design = Rooms.designer().withoutAdvice().design(rooms.home(), rooms.room());
			long[] expected = new ExhaustiveStrips(rooms.room(), design.brief()).solve();
			assertArrayEquals(expected, ExhaustiveSearchTest.terms(design.layout().objective()),
					() -> "seed " + one + ": " + random.last());
			for (int t = 0; t < seen.length; t++) {
				seen[t] += expected[t] > 0 ? 1 : 0;
			}
		}
		for (int t = 0; t < seen.length; t++) {
			assertTrue(seen[t] >= 5, "term " + (t + 1) + " was above zero in " + seen[t] + " rooms only");
		}
	}
}
