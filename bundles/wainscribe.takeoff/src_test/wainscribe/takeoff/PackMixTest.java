// SPDX-License-Identifier: EPL-2.0
package wainscribe.takeoff;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PackMixTest {

	/** "1 L at 18; 2.5 L at 38" as packs. */
	private static List<Pack> packs(String offer) {
		List<Pack> packs = new ArrayList<>();
		for (String part : offer.split(";")) {
			String[] words = part.strip().split(" ");
			packs.add(new Pack(new BigDecimal(words[0]), new BigDecimal(words[3])));
		}
		return packs;
	}

	private static BigDecimal cost(List<Integer> counts, List<Pack> packs) {
		BigDecimal sum = BigDecimal.ZERO;
		for (int i = 0; i < packs.size(); i++) {
			sum = sum.add(packs.get(i).price().multiply(BigDecimal.valueOf(counts.get(i))));
		}
		return sum;
	}

	/** Litres, cans (prices invented), cheapest cans, cost. Derived: every mix tried by an independent program, best unique. */
	@ParameterizedTest
	@CsvSource(delimiter = '|', value = { "4.444444 | 1 L at 18; 2.5 L at 38; 5 L at 69 | 0,0,1 | 69",
			"2.68 | 1 L at 18; 2.5 L at 38; 5 L at 69 | 3,0,0 | 54", "3.488889 | 1 L at 16; 2.5 L at 30; 5 L at 72 | 1,1,0 | 46",
			"4 | 1 L at 18; 2.5 L at 38; 5 L at 69 | 0,0,1 | 69", "10.71875 | 1 L at 18; 2.5 L at 38; 5 L at 69 | 1,0,2 | 156",
			"2.4 | 0.75 L at 14; 2.5 L at 36 | 0,1 | 36", "6.702699 | 0.946352946 L at 19; 3.785411784 L at 48 | 0,2 | 96" })
	void theCheapestCansAreFound(BigDecimal litres, String offer, String cans, BigDecimal price) {
		List<Integer> counts = PackMix.cheapest(litres, packs(offer));
		assertEquals(Arrays.stream(cans.split(",")).map(Integer::valueOf).toList(), counts);
		assertEquals(0, price.compareTo(cost(counts, packs(offer))));
	}

	/** No mix of up to three sizes, tried one by one, is cheaper, or as cheap with less left over. */
	@Property(tries = 300)
	void noOtherMixIsBetter(@ForAll @IntRange(min = 1, max = 40) int need,
			@ForAll @Size(min = 3, max = 3) List<@IntRange(min = 1, max = 9) Integer> sizes,
			@ForAll @Size(min = 3, max = 3) List<@IntRange(min = 1, max = 30) Integer> prices) {
		List<Pack> packs = new ArrayList<>();
		for (int i = 0; i < 3; i++) {
			packs.add(new Pack(BigDecimal.valueOf(sizes.get(i)), BigDecimal.valueOf(prices.get(i))));
		}
		List<Integer> counts = PackMix.cheapest(BigDecimal.valueOf(need), packs);
		int size = counts.get(0) * sizes.get(0) + counts.get(1) * sizes.get(1) + counts.get(2) * sizes.get(2);
		int found = cost(counts, packs).intValueExact();
		assertTrue(size >= need);
		for (int a = 0; a <= need; a++) {
			for (int b = 0; b <= need; b++) {
				for (int c = 0; c <= need; c++) {
					int other = a * sizes.get(0) + b * sizes.get(1) + c * sizes.get(2);
					int price = a * prices.get(0) + b * prices.get(1) + c * prices.get(2);
					assertTrue(other < need || price > found || price == found && other >= size);
				}
			}
		}
	}
}
