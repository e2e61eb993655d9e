// SPDX-License-Identifier: EPL-2.0
package wainscribe.profile.section;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;

import org.junit.jupiter.api.Test;

import wainscribe.model.length.Length;

/** Segments against closed forms of plane geometry. */
class SegmentTest {

	private static final double UNIT = 1.0 / Length.UNITS_PER_MILLIMETRE;

	private static SectionPoint mm(long x, long y) {
		return SectionPoint.ofMillimetres(x, y);
	}

	/** Circle: length pi r, swept area about its centre pi r squared / 2. */
	@Test
	void aHalfCircleHasTheMeasuresOfItsCircle() {
		ArcSegment half = new ArcSegment(mm(-10, 0), mm(10, 0), Length.ofMillimetres(10));
		assertEquals(Math.PI * 10, half.lengthMillimetres(), 1e-12);
		assertEquals(-Math.PI * 50, half.sweptArea(), 1e-9);
		assertEquals(new Spot(0, 0).distanceTo(half.centre()), 0, 1e-12);
		assertEquals(mm(0, 10), half.at(0.5).nearest());
		assertEquals(List.of(0.5), half.turns());
	}

	/** Rise of a 3-4-5 arc: chord 8, distance of the centre from the chord 3, radius 5, hence rise 2; more than half: 8. */
	@Test
	void riseAndChordGiveTheRadius() {
		ArcSegment small = new ArcSegment(mm(-4, 0), mm(4, 0), Length.ofMillimetres(2));
		ArcSegment large = new ArcSegment(mm(-4, 0), mm(4, 0), Length.ofMillimetres(8));
		assertEquals(5, small.radius(), 1e-12);
		assertEquals(5, large.radius(), 1e-12);
		assertEquals(-3, small.centre().y(), 1e-12);
		assertEquals(3, large.centre().y(), 1e-12);
		assertEquals(10 * Math.PI, small.lengthMillimetres() + large.lengthMillimetres(), 1e-9);
	}

	@Test
	void anArcThroughAPointPassesThroughIt() {
		ArcSegment arc = (ArcSegment) ArcSegment.through(mm(5, 0), mm(3, 4), mm(-5, 0));
		assertEquals(5, arc.radius(), 2 * UNIT);
		assertEquals(new Spot(0, 0).distanceTo(arc.centre()), 0, 2 * UNIT);
		ArcSegment other = (ArcSegment) ArcSegment.through(mm(5, 0), mm(4, -3), mm(0, 5));
		assertEquals(1.5 * Math.PI, Math.abs(other.sweep()), 1e-4);
		assertEquals(new StraightSegment(mm(0, 0), mm(9, 9)), ArcSegment.through(mm(0, 0), mm(4, 4), mm(9, 9)));
	}

	/** A straight Bezier has the length of its chord; a parabola y = x squared from 0 to 1 has sqrt(5)/2 + asinh(2)/4. */
	@Test
	void curvesHaveTheLengthOfTheirClosedForms() {
		assertEquals(50, new CurveSegment(mm(0, 0), mm(12, 16), mm(15, 20), mm(30, 40)).lengthMillimetres(), 1e-9);
		// The parabola over 30 mm as a cubic: handles a third and two thirds along its control polygon.
		CurveSegment parabola = new CurveSegment(mm(0, 0), mm(10, 0), mm(20, 10), mm(30, 30));
		assertEquals(30 * (Math.sqrt(5) / 2 + Math.log(2 + Math.sqrt(5)) / 4), parabola.lengthMillimetres(), 1e-6);
		// Between the chord and the parabola lie 30 squared / 6 (Archimedes), swept about the origin on the chord.
		assertEquals(900 / 6.0, parabola.sweptArea(), 1e-9);
	}

	/** A quarter of a circle as one Bezier is 0.03 % of its radius off at most. */
	@Test
	void anArcTurnedToCurvesKeepsItsCourse() {
		ArcSegment arc = new ArcSegment(mm(-40, 0), mm(40, 0), Length.ofMillimetres(40));
		for (CurveSegment curve : CurvesAlong.of(arc)) {
			for (int i = 0; i <= 20; i++) {
				assertEquals(40, curve.at(i / 20.0).distanceTo(new Spot(0, 0)), 40 * 0.0003);
			}
		}
		assertEquals(2, CurvesAlong.of(arc).size());
		assertTrue(CurvesAlong.of(new StraightSegment(mm(0, 0), mm(30, 0))).getFirst().at(0.5).x() == 15);
	}
}
