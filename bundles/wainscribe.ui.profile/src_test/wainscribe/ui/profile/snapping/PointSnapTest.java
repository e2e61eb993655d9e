// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.profile.snapping;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;

import org.junit.jupiter.api.Test;

import wainscribe.model.length.Length;
import wainscribe.profile.section.SectionPoint;

/** A moved point meets what it is drawn to exactly, and else lies on marks. */
class PointSnapTest {

	private static final Length MARK = Length.ofMillimetres(1);
	private static final SectionPoint NEIGHBOUR = SectionPoint.ofMillimetres(10, 10);

	private final PointSnap snap = PointSnap.around(List.of(NEIGHBOUR), List.of(NEIGHBOUR), 0.7, MARK);

	@Test
	void farFromEverythingItGoesToMarks() {
		assertEquals(SectionPoint.ofMillimetres(25, 14), snap.snap(tenths(252, 138)).point());
		assertEquals(List.of(), snap.snap(tenths(252, 138)).lines());
	}

	@Test
	void nearTheHeightOfANeighbourItIsEquallyHigh() {
		PointSnap.Result result = snap.snap(tenths(104, 252));
		assertEquals(SectionPoint.ofMillimetres(10, 25), result.point());
		assertEquals(Heading.LEVEL, result.lines().getFirst().heading());
	}

	@Test
	void nearFortyFiveDegreesBothDistancesAreEqual() {
		SectionPoint point = snap.snap(tenths(202, 207)).point();
		assertEquals(point.x().minus(NEIGHBOUR.x()), point.y().minus(NEIGHBOUR.y()));
		SectionPoint falling = snap.snap(tenths(202, -2)).point();
		assertEquals(falling.x().minus(NEIGHBOUR.x()), NEIGHBOUR.y().minus(falling.y()));
	}

	@Test
	void whereTwoLinesMeetItLiesOnBoth() {
		SectionPoint other = SectionPoint.ofMillimetres(40, 31);
		PointSnap two = PointSnap.around(List.of(NEIGHBOUR, other), List.of(NEIGHBOUR, other), 0.7, MARK);
		PointSnap.Result result = two.snap(tenths(103, 307));
		assertEquals(new SectionPoint(NEIGHBOUR.x(), other.y()), result.point());
		assertEquals(2, result.lines().size());
	}

	@Test
	void ontoAPointItIsThatPoint() {
		PointSnap closing = new PointSnap(List.of(NEIGHBOUR), List.of(), 0.7, MARK);
		assertEquals(new PointSnap.Result(NEIGHBOUR, List.of(), true), closing.snap(tenths(104, 96)));
	}

	@Property
	void whateverItIsDrawnToIsMetExactly(@ForAll @IntRange(min = -400, max = 400) int up, @ForAll @IntRange(min = -400, max = 400) int out) {
		PointSnap.Result result = snap.snap(tenths(up, out));
		for (GuideLine line : result.lines()) {
			assertEquals(0, line.distanceTo(result.point()), line + " " + result.point());
		}
		boolean onMarks = result.point().x().isMultipleOf(MARK) && result.point().y().isMultipleOf(MARK);
		assertTrue(onMarks || !result.lines().isEmpty());
		assertTrue(result.point().spot().distanceTo(tenths(up, out).spot()) < 1.5);
	}

	private static SectionPoint tenths(int up, int out) {
		return new SectionPoint(new Length(up * Length.UNITS_PER_MILLIMETRE / 10), new Length(out * Length.UNITS_PER_MILLIMETRE / 10));
	}
}
