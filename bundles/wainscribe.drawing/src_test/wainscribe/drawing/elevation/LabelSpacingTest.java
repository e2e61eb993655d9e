// SPDX-License-Identifier: EPL-2.0
package wainscribe.drawing.elevation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.IntStream;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;

class LabelSpacingTest {

	private static final double ROUNDING = 1e-6;

	@Property
	void neverOverlapAndKeepTheirOrder(
			@ForAll @Size(max = 60) List<@DoubleRange(min = 0, max = 5000) Double> wishes,
			@ForAll @DoubleRange(min = 1, max = 200) double size) {
		List<LabelSpacing.Slot> slots = wishes.stream().sorted().map(wish -> new LabelSpacing.Slot(wish, size)).toList();
		List<Double> middles = LabelSpacing.middles(slots, -50);
		assertEquals(slots.size(), middles.size());
		assertTrue(middles.isEmpty() || middles.getFirst() - size / 2 >= -50 - ROUNDING);
		IntStream.range(1, middles.size())
				.forEach(i -> assertTrue(middles.get(i) - middles.get(i - 1) >= size - ROUNDING));
	}

	@Property
	void stayWhereThereIsRoom(@ForAll @Size(max = 30) List<@DoubleRange(min = 10, max = 100) Double> steps) {
		double[] at = { 0 };
		List<LabelSpacing.Slot> slots = steps.stream().map(step -> new LabelSpacing.Slot(at[0] += step, 10)).toList();
		List<Double> middles = LabelSpacing.middles(slots, -1e9);
		IntStream.range(0, slots.size()).forEach(i -> assertEquals(slots.get(i).wish(), middles.get(i), ROUNDING));
	}

	@Test
	void twoOnOneMarkMoveApartEqually() {
		assertEquals(List.of(95.0, 105.0),
				LabelSpacing.middles(List.of(new LabelSpacing.Slot(100, 10), new LabelSpacing.Slot(100, 10)), 0));
	}
}
