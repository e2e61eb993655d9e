// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.elevation.snapping;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;

import org.junit.jupiter.api.Test;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import wainscribe.model.length.Length;
import wainscribe.model.length.LengthUnit;
import wainscribe.model.outline.Outline;

/** Moved edges meet near lines exactly, and else stand on tape marks. */
class SnapperTest {

	private static final Length MARK = LengthUnit.INCH.tapeMark();
	private static final Outline PLATE = Outline.ofSize(in(10), in(14), in(3), in(5));

	@Test
	void anEdgeMeetsANearLineExactly() {
		Length odd = new Length(in(30).units() + 7);
		Snapper.Result result = snapper(odd).snap(PLATE, EdgeShift.moving(Length.ofInches(201, 10), Length.ZERO));
		assertEquals(odd, result.shift().applyTo(PLATE).x0());
		assertEquals("line", result.plumb().name());
		assertNull(result.level());
	}

	@Test
	void theRightEdgeMeetsALineToo() {
		Snapper.Result result = snapper(in(30)).snap(PLATE, EdgeShift.moving(Length.ofInches(171, 10), Length.ZERO));
		assertEquals(in(30), result.shift().applyTo(PLATE).x1());
		assertEquals(in(3), result.shift().applyTo(PLATE).width());
	}

	@Test
	void theAxisOfWhatIsMovedAsAWholeMeetsALine() {
		Snapper.Result result = snapper(in(40)).snap(PLATE, EdgeShift.moving(Length.ofInches(286, 10), Length.ZERO));
		assertEquals(Length.ofInches(77, 2), result.shift().applyTo(PLATE).x0());
	}

	@Test
	void theAxisOfWhatIsSizedMeetsNothing() {
		EdgeShift right = new EdgeShift(Length.ZERO, Length.ZERO, Length.ofInches(31, 10), Length.ZERO);
		Snapper.Result result = snapper(Length.ofInches(131, 10)).snap(PLATE, right);
		assertNull(result.plumb());
		assertTrue(result.shift().applyTo(PLATE).x1().isMultipleOf(MARK));
	}

	@Test
	void whatStandsStillIsNotDrawnToAnything() {
		Snapper.Result result = snapper(Length.ofInches(101, 10)).snap(PLATE, EdgeShift.moving(Length.ZERO, in(1)));
		assertEquals(PLATE.x0(), result.shift().applyTo(PLATE).x0());
	}

	@Property
	void farFromLinesTheLeftEdgeStandsOnATapeMark(@ForAll @IntRange(min = 1, max = 4_000_000) int units) {
		Snapper.Result result = snapper(in(900)).snap(PLATE, EdgeShift.moving(new Length(units), Length.ZERO));
		Length x = result.shift().applyTo(PLATE).x0();
		assertTrue(x.isMultipleOf(MARK));
		assertTrue(x.minus(PLATE.x0().plus(new Length(units))).abs().times(2).units() <= MARK.units());
	}

	@Property
	void edgesNeverPassEachOther(@ForAll @IntRange(min = -100, max = 100) int left,
			@ForAll @IntRange(min = -100, max = 100) int bottom, @ForAll @IntRange(min = -100, max = 100) int right,
			@ForAll @IntRange(min = -100, max = 100) int top) {
		Outline after = new EdgeShift(in(left), in(bottom), in(right), in(top)).applyTo(PLATE);
		assertTrue(after.width().signum() >= 0 && after.height().signum() >= 0);
	}

	private static Snapper snapper(Length plumb) {
		return new Snapper(new SnapLines(List.of(new SnapLine(plumb, "line")), List.of()), Length.ofInches(1, 4), MARK);
	}

	private static Length in(long inches) {
		return Length.ofInches(inches);
	}
}
