// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.drafting.rulers;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;

import org.junit.jupiter.api.Test;

import wainscribe.model.length.Length;
import wainscribe.model.length.LengthUnit;

/** A ruler's numbers can be read and its marks told apart at any scale. */
class RulerMarksTest {

	@Test
	void atTheScaleOfAWallFeetAreNumbered() {
		RulerMarks marks = RulerMarks.of(LengthUnit.INCH, 96 / 25.4 / 16);
		assertEquals(Length.ofInches(12), marks.numbered());
		assertEquals("3'", marks.text(Length.ofInches(36)));
	}

	@Test
	void millimetresNeedNoUnit() {
		assertEquals("500", RulerMarks.of(LengthUnit.MILLIMETRE, 0.2).text(Length.ofMillimetres(500)));
	}

	@Property
	void marksAreFarEnoughApart(@ForAll LengthUnit unit, @ForAll @DoubleRange(min = 0.05, max = 3.7) double scale) {
		RulerMarks marks = RulerMarks.of(unit, scale);
		assertTrue(marks.numbered().approximateMillimetres() * scale >= 58);
		assertTrue(marks.fine().approximateMillimetres() * scale >= 5);
		assertTrue(marks.numbered().isMultipleOf(marks.fine()));
	}
}
