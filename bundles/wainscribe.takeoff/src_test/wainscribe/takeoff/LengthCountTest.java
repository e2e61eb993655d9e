// SPDX-License-Identifier: EPL-2.0
package wainscribe.takeoff;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Collections;
import java.util.List;
import java.util.stream.Stream;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;

import org.junit.jupiter.api.Test;

import wainscribe.model.length.Length;

class LengthCountTest {

	private static int count(int stock, int kerf, Integer... pieces) {
		return LengthCount.of(Stream.of(pieces).map(Length::ofMillimetres).toList(), Length.ofMillimetres(stock),
				Length.ofMillimetres(kerf));
	}

	@Test
	void aPieceMoreTakesAKerfMore() {
		assertEquals(1, count(2400, 0, 1200, 1200));
		assertEquals(2, count(2400, 3, 1200, 1200));
		assertEquals(1, count(2403, 3, 1200, 1200));
		assertEquals(1, count(2400, 3, 2400));
		assertEquals(0, count(2400, 3));
	}

	@Test
	void aRunLongerThanTheStockIsJoined() {
		assertEquals(3, count(2400, 3, 5000, 1900));
		assertEquals(2, count(2400, 3, 4800));
	}

	/** Never below the material, never above one length a piece, and any order of the pieces gives the same. */
	@Property(tries = 200)
	void theCountIsEnoughAndDoesNotDependOnTheOrder(
			@ForAll @Size(min = 1, max = 40) List<@IntRange(min = 1, max = 2400) Integer> pieces) {
		List<Length> lengths = pieces.stream().map(Length::ofMillimetres).toList();
		List<Length> reversed = new java.util.ArrayList<>(lengths);
		Collections.reverse(reversed);
		Length stock = Length.ofMillimetres(2400);
		int count = LengthCount.of(lengths, stock, Practice.KERF);
		int material = pieces.stream().mapToInt(Integer::intValue).sum();
		assertTrue(count * 2400 >= material && count <= pieces.size());
		assertEquals(count, LengthCount.of(reversed, stock, Practice.KERF));
	}
}
