// SPDX-License-Identifier: EPL-2.0
package wainscribe.commands;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Random;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;

import org.junit.jupiter.api.Test;

import wainscribe.model.length.Length;
import wainscribe.model.outline.Outline;

/** Things brought in line keep their size, and the one they are brought in line with stays. */
class AlignmentTest {

	private final List<Outline> three = List.of(mm(0, 300, 100, 100), mm(500, 320, 60, 80), mm(700, 100, 200, 50));

	@Test
	void edgesAndMiddlesMeetTheReference() {
		assertEquals(List.of(500, 500, 500), x(Alignment.LEFT.arrange(three, 1)));
		assertEquals(List.of(460, 500, 360), x(Alignment.RIGHT.arrange(three, 1)));
		assertEquals(List.of(480, 500, 430), x(Alignment.CENTRE.arrange(three, 1)));
		assertEquals(List.of(320, 320, 320), y(Alignment.BOTTOM.arrange(three, 1)));
		assertEquals(List.of(300, 320, 350), y(Alignment.TOP.arrange(three, 1)));
		assertEquals(List.of(310, 320, 335), y(Alignment.MIDDLE.arrange(three, 1)));
	}

	@Test
	void spacedEvenlyTheClearDistancesAreEqual() {
		assertEquals(List.of(0, 370, 700), x(Alignment.SPACE_ALONG.arrange(three, 0)));
	}

	@Test
	void twoThingsCantBeSpaced() {
		assertThrows(IllegalArgumentException.class, () -> Alignment.SPACE_ALONG.arrange(three.subList(0, 2), 0));
	}

	@Property(tries = 300)
	void spacedGapsDifferByLessThanTwoUnits(@ForAll long seed) {
		Random random = new Random(seed);
		List<Outline> things = new ArrayList<>();
		for (int i = 0; i < 3 + random.nextInt(6); i++) {
			things.add(Outline.ofSize(new Length(random.nextInt(90_000_000)), Length.ZERO, new Length(1 + random.nextInt(9_000_000)),
					new Length(1)));
		}
		List<Outline> spread = new ArrayList<>(Alignment.SPACE_ALONG.arrange(things, 0));
		List<Integer> order = new ArrayList<>();
		for (int i = 0; i < things.size(); i++) {
			order.add(i);
			assertEquals(things.get(i).width(), spread.get(i).width());
		}
		order.sort(Comparator.comparing(index -> things.get(index).x0()));
		List<Long> gaps = new ArrayList<>();
		for (int i = 1; i < order.size(); i++) {
			gaps.add(spread.get(order.get(i)).x0().minus(spread.get(order.get(i - 1)).x1()).units());
		}
		long least = gaps.stream().min(Long::compare).orElseThrow();
		long most = gaps.stream().max(Long::compare).orElseThrow();
		assertTrue(most - least <= 2, gaps.toString());
	}

	private static List<Integer> x(List<Outline> outlines) {
		return outlines.stream().map(outline -> (int) outline.x0().approximateMillimetres()).toList();
	}

	private static List<Integer> y(List<Outline> outlines) {
		return outlines.stream().map(outline -> (int) outline.y0().approximateMillimetres()).toList();
	}

	private static Outline mm(int x, int y, int width, int height) {
		return Outline.ofSize(Length.ofMillimetres(x), Length.ofMillimetres(y), Length.ofMillimetres(width),
				Length.ofMillimetres(height));
	}
}
