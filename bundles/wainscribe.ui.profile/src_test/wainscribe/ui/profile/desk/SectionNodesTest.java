// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.profile.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;

import org.junit.jupiter.api.Test;

import wainscribe.model.length.Length;
import wainscribe.profile.section.ArcSegment;
import wainscribe.profile.section.CurveSegment;
import wainscribe.profile.section.ProfileSection;
import wainscribe.profile.section.SectionCheck;
import wainscribe.profile.section.SectionPath;
import wainscribe.profile.section.SectionPoint;

/** What moving points, segments and handles does to a section. */
class SectionNodesTest {

	/** An edge, an arc, a curve and an edge, on a straight back. */
	private final ProfileSection section = SectionPath.atOrigin().out(mm(8)).arc(mm(10), mm(4), mm(1))
			.curve(SectionPoint.ofMillimetres(4, 0), SectionPoint.ofMillimetres(6, -4), SectionPoint.ofMillimetres(10, -4)).out(mm(-8)).section();
	private final SectionNodes nodes = new SectionNodes(section);

	@Test
	void everythingCanBeTakenHoldOf() {
		assertTrue(new SectionCheck().faults(section).isEmpty());
		assertEquals(5, nodes.all().stream().filter(NodeKey.OfSegment.class::isInstance).count());
		assertEquals(5, nodes.all().stream().filter(NodeKey.OfPoint.class::isInstance).count());
		assertEquals(List.of(new NodeKey.OfHandle(1, Grip.MIDDLE), new NodeKey.OfHandle(2, Grip.LEAVES), new NodeKey.OfHandle(2, Grip.ARRIVES)),
				nodes.all().stream().filter(NodeKey.OfHandle.class::isInstance).toList());
	}

	@Test
	void aPointIsPlacedExactlyAndItsCurveKeepsLeavingTheSameWay() {
		SectionPoint to = new SectionPoint(mm(11), new Length(101_001));
		ProfileSection moved = nodes.placed(new NodeKey.OfPoint(2), to);
		assertEquals(to, moved.outline().get(2).start());
		CurveSegment before = (CurveSegment) section.outline().get(2);
		CurveSegment after = (CurveSegment) moved.outline().get(2);
		assertEquals(before.first().x().minus(before.start().x()), after.first().x().minus(after.start().x()));
		assertEquals(before.second(), after.second());
	}

	@Test
	void aSegmentGoesWithBothItsEnds() {
		ProfileSection moved = nodes.moved(List.of(new NodeKey.OfSegment(1)), Length.ZERO, mm(2));
		assertEquals(SectionPoint.ofMillimetres(0, 10), moved.outline().get(1).start());
		assertEquals(SectionPoint.ofMillimetres(10, 14), moved.outline().get(1).end());
		assertEquals(((ArcSegment) section.outline().get(1)).rise(), ((ArcSegment) moved.outline().get(1)).rise());
	}

	@Test
	void aHandleBendsItsCurveOnly() {
		ProfileSection moved = nodes.placed(new NodeKey.OfHandle(2, Grip.ARRIVES), SectionPoint.ofMillimetres(15, 15));
		assertEquals(SectionPoint.ofMillimetres(15, 15), ((CurveSegment) moved.outline().get(2)).second());
		assertEquals(section.outline().get(1), moved.outline().get(1));
	}

	@Test
	void aHandleWhoseCurveGoesAlongIsNotMovedTwice() {
		List<NodeKey> together = List.of(new NodeKey.OfPoint(2), new NodeKey.OfHandle(2, Grip.LEAVES));
		assertEquals(nodes.moved(together.subList(0, 1), mm(1), mm(1)), nodes.moved(together, mm(1), mm(1)));
	}

	@Property
	void theMiddleOfAnArcFollowsThePointerSquareToItsChord(@ForAll @IntRange(min = 1, max = 200) int tenths) {
		ProfileSection straight = SectionPath.atOrigin().out(mm(8)).arc(mm(20), Length.ZERO, mm(3)).out(mm(-8)).section();
		SectionPoint to = new SectionPoint(mm(10), mm(8).plus(new Length(tenths * Length.UNITS_PER_MILLIMETRE / 10)));
		ProfileSection bent = new SectionNodes(straight).placed(new NodeKey.OfHandle(1, Grip.MIDDLE), to);
		assertEquals(tenths * Length.UNITS_PER_MILLIMETRE / 10, assertInstanceOf(ArcSegment.class, bent.outline().get(1)).rise().units());
	}

	@Property
	void movingThereAndBackChangesNoPoint(@ForAll @IntRange(min = 0, max = 4) int point, @ForAll @IntRange(min = -9, max = 9) int up,
			@ForAll @IntRange(min = -9, max = 9) int out) {
		List<NodeKey> node = List.of(new NodeKey.OfPoint(point));
		ProfileSection there = nodes.moved(node, mm(up), mm(out));
		assertEquals(nodes.points(), new SectionNodes(new SectionNodes(there).moved(node, mm(-up), mm(-out))).points());
	}

	private static Length mm(long millimetres) {
		return Length.ofMillimetres(millimetres);
	}
}
