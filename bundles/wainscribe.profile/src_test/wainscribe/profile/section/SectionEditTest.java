// SPDX-License-Identifier: EPL-2.0
package wainscribe.profile.section;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;

import org.junit.jupiter.api.Test;

import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;

import wainscribe.model.length.Length;

/** Laws of editing: what a step must not change. */
class SectionEditTest {

	private static final double ROUNDED = 0.05;

	@Provide
	Arbitrary<ProfileSection> sections() {
		return ArbitrarySections.sound();
	}

	@Property(tries = 200)
	void mirroringKeepsGirthAreaAndSizeAndUndoesItself(@ForAll("sections") ProfileSection section) {
		ProfileSection mirrored = new SectionEdit(section).mirrored();
		assertEquals(section.girthMillimetres(), mirrored.girthMillimetres(), 1e-6);
		assertEquals(section.areaSquareMillimetres(), mirrored.areaSquareMillimetres(), 1e-6);
		assertEquals(section.box(), mirrored.box());
		assertEquals(section.canBeCoped(), mirrored.canBeCoped());
		assertEquals(List.of(), new SectionCheck().faults(mirrored));
		assertEquals(section, new SectionEdit(mirrored).mirrored());
	}

	@Property(tries = 200)
	void splittingKeepsGirthAndArea(@ForAll("sections") ProfileSection section, @ForAll @IntRange(max = 1000) int pick,
			@ForAll @DoubleRange(min = 0.1, max = 0.9) double share) {
		int segment = pick % section.outline().size();
		ProfileSection split = new SectionEdit(section).split(segment, share);
		assertEquals(section.outline().size() + 1, split.outline().size());
		assertEquals(section.girthMillimetres(), split.girthMillimetres(), 0.002);
		assertEquals(section.areaSquareMillimetres(), split.areaSquareMillimetres(), ROUNDED);
		assertEquals(section.back().size() + (segment < section.face().size() ? 0 : 1), split.back().size());
		assertEquals(List.of(), new SectionCheck().faults(split));
	}

	@Property(tries = 100)
	void movingAPointThereAndBackChangesNothingThatIsMeasured(@ForAll("sections") ProfileSection section,
			@ForAll @IntRange(max = 1000) int pick) {
		SectionEdit edit = new SectionEdit(section);
		int point = pick % edit.points().size();
		SectionPoint from = edit.points().get(point);
		SectionPoint to = from.moved(Length.ofMillimetres(2), Length.ofMillimetres(3));
		ProfileSection moved = edit.movePoint(point, to);
		assertEquals(to, new SectionEdit(moved).points().get(point));
		ProfileSection back = new SectionEdit(moved).movePoint(point, from);
		assertEquals(edit.points(), new SectionEdit(back).points());
		assertEquals(section.areaSquareMillimetres(), back.areaSquareMillimetres(), ROUNDED);
	}

	@Property(tries = 100)
	void turningToCurvesKeepsTheCourse(@ForAll("sections") ProfileSection section, @ForAll @IntRange(max = 1000) int pick) {
		ProfileSection curved = new SectionEdit(section).turnToCurve(pick % section.outline().size());
		assertEquals(section.girthMillimetres(), curved.girthMillimetres(), 0.01);
		assertEquals(section.areaSquareMillimetres(), curved.areaSquareMillimetres(), 0.2);
	}

	@Property(tries = 100)
	void anInsertedPointLiesWhereAskedAndCanBeDeleted(@ForAll("sections") ProfileSection section,
			@ForAll @IntRange(max = 1000) int pick) {
		SectionEdit edit = new SectionEdit(section);
		int segment = pick % section.outline().size();
		SectionPoint at = section.outline().get(segment).at(0.4).nearest().moved(Length.ofMillimetres(1), Length.ofMillimetres(1));
		ProfileSection more = edit.insertPoint(segment, at);
		assertEquals(at, new SectionEdit(more).points().get(segment + 1));
		assertEquals(edit.points(), new SectionEdit(new SectionEdit(more).deletePoint(segment + 1)).points());
	}

	@Test
	void linesBecomeArcsAndLinesAgain() {
		ProfileSection flat = SectionPath.atOrigin().out(Length.ofMillimetres(9)).along(Length.ofMillimetres(30))
				.out(Length.ofMillimetres(-9)).section();
		ProfileSection arched = new SectionEdit(flat).bendThrough(1, SectionPoint.ofMillimetres(15, 14));
		assertEquals(new ArcSegment(SectionPoint.ofMillimetres(0, 9), SectionPoint.ofMillimetres(30, 9), Length.ofMillimetres(5)),
				arched.face().get(1));
		assertEquals(flat, new SectionEdit(arched).turnToLine(1));
		assertEquals(arched, new SectionEdit(flat).turnToArc(1, Length.ofMillimetres(5)));
		ProfileSection curved = new SectionEdit(flat).turnToCurve(1);
		ProfileSection pulled = new SectionEdit(curved).moveHandle(1, CurveHandle.SECOND, SectionPoint.ofMillimetres(20, 20));
		assertEquals(SectionPoint.ofMillimetres(20, 20), ((CurveSegment) pulled.face().get(1)).second());
		assertThrows(IllegalArgumentException.class,
				() -> new SectionEdit(flat).moveHandle(1, CurveHandle.FIRST, SectionPoint.ORIGIN));
	}

	@Test
	void aSectionIsDrawnPointByPointClosedAndGivenItsBack() {
		SectionPoint[] corners = { SectionPoint.ORIGIN, SectionPoint.ofMillimetres(0, 9), SectionPoint.ofMillimetres(30, 9),
				SectionPoint.ofMillimetres(30, 0) };
		ProfileSection drawn = ProfileSection.EMPTY;
		for (int i = 1; i < corners.length; i++) {
			drawn = new SectionEdit(drawn).append(new StraightSegment(corners[i - 1], corners[i]));
		}
		assertEquals(List.of(corners), new SectionEdit(drawn).points());
		ProfileSection closed = new SectionEdit(drawn).close();
		assertEquals(List.of(), new SectionCheck().faults(closed));
		assertEquals(48, closed.girthMillimetres());
		ProfileSection floor = new SectionEdit(closed).withBack(3, 2);
		assertEquals(2, floor.back().size());
		assertEquals(39, floor.girthMillimetres());
		assertEquals(270, floor.areaSquareMillimetres());
		assertThrows(IllegalArgumentException.class,
				() -> new SectionEdit(closed).append(new StraightSegment(SectionPoint.ORIGIN, SectionPoint.ofMillimetres(1, 1))));
	}

	@Test
	void aDeletedCornerOfACurveLeavesACurve() {
		ProfileSection bead = SectionPath.atOrigin().out(Length.ofMillimetres(4)).halfRound(Length.ofMillimetres(10))
				.out(Length.ofMillimetres(-4)).section();
		ProfileSection fewer = new SectionEdit(bead).deletePoint(1);
		assertEquals(2, fewer.face().size());
		assertEquals(SectionPoint.ORIGIN, fewer.face().getFirst().start());
		assertEquals(SectionPoint.ofMillimetres(10, 4), fewer.face().getFirst().end());
		assertEquals(CurveSegment.class, fewer.face().getFirst().getClass());
	}
}
