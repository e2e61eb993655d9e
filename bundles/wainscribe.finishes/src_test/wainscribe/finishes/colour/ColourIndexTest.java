// SPDX-License-Identifier: EPL-2.0
package wainscribe.finishes.colour;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Comparator;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import java.util.stream.Stream;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

class ColourIndexTest {

	/** Equal to looking at every colour, in answer and order. */
	@Property(tries = 300)
	void equalsThePlainScan(@ForAll long seed, @ForAll @IntRange(min = 1, max = 2000) int size, @ForAll @IntRange(min = 1, max = 12) int count) {
		Random random = new Random(seed);
		double spread = random.nextDouble() * 128;
		List<Lab> list = Stream.generate(() -> colour(random, spread)).limit(size).toList();
		Lab wanted = colour(random, 128);
		List<ColourMatch> scan = IntStream.range(0, size).mapToObj(i -> new ColourMatch(i, ColourDifference.ciede2000(wanted, list.get(i))))
				.sorted(Comparator.comparingDouble(ColourMatch::difference).thenComparingInt(ColourMatch::index)).limit(count).toList();
		assertEquals(scan, new ColourIndex(list).nearest(wanted, count));
	}

	/** The floor of a box is below the difference of each colour in it, blues with their turned ellipses included. */
	@Property(tries = 3000)
	void noColourLiesBelowTheFloorOfItsBox(@ForAll long seed) {
		Random random = new Random(seed);
		Lab one = colour(random, 140);
		Lab other = colour(random, 140);
		double size = random.nextDouble() * 20;
		LabBox box = new LabBox(one.lightness() - size * random.nextDouble(), one.lightness() + size * random.nextDouble(),
				one.a() - size * random.nextDouble(), one.a() + size * random.nextDouble(), one.b() - size * random.nextDouble(),
				one.b() + size * random.nextDouble());
		assertTrue(box.floor(other) <= ColourDifference.ciede2000(one, other) + 1e-9, () -> one + " " + other + " " + box);
	}

	@Test
	void emptyListFindsNothing() {
		assertEquals(List.of(), new ColourIndex(List.of()).nearest(new Lab(50, 0, 0), 3));
	}

	private static Lab colour(Random random, double spread) {
		return new Lab(random.nextDouble() * 100, (random.nextDouble() * 2 - 1) * spread, (random.nextDouble() * 2 - 1) * spread);
	}
}
