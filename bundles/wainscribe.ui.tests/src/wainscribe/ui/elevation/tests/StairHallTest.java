// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.elevation.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;

import org.eclipse.draw2d.geometry.Point;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.swt.SWT;
import org.junit.jupiter.api.Test;

import wainscribe.layout.FrameOutline;
import wainscribe.layout.FrameRole;
import wainscribe.model.ExistingTrim;
import wainscribe.model.Placed;
import wainscribe.model.Room;
import wainscribe.model.Service;
import wainscribe.model.Wall;
import wainscribe.model.length.Length;
import wainscribe.ui.elevation.editparts.FrameEditPart;

/** What lies on a slope, in the wall, or on it from before is dragged like everything else, and nudged by keys. */
class StairHallTest extends OpenEditor {

	@Override
	Schoolroom home(String name) throws Exception {
		return Schoolroom.withStairs(name);
	}

	@Test
	void aFrameOnTheStairIsMovedAlongItsSlope() {
		Room before = EcoreUtil.copy(session.room());
		FrameEditPart part = thing(stair(), FrameEditPart.class);
		FrameOutline frame = part.frame().orElseThrow();
		assertTrue(frame.isRaked(), "it climbs");
		viewer.select(part);
		Point middle = at(stair(), frame.x().plus(frame.width().dividedBy(2)),
				frame.y().plus(frame.rise().dividedBy(2)).plus(frame.height().dividedBy(2)));
		hand.drag(middle, 8, -4);
		FrameOutline moved = part.frame().orElseThrow();
		assertEquals(FrameRole.PLACED, moved.role());
		Length along = moved.x().minus(frame.x());
		assertTrue(along.signum() > 0, "moved " + along);
		assertSlope(frame, moved);
		assertEquals(frame.width(), moved.width());
		assertEquals("Move Frame", session.commandStack().getUndoCommand().getLabel());
		undo();
		assertEqual(before, session.room());
	}

	@Test
	void aFrameOnTheStairIsWidenedAndNudgedAlongItsSlope() {
		FrameEditPart part = thing(stair(), FrameEditPart.class);
		FrameOutline frame = part.frame().orElseThrow();
		viewer.select(part);
		hand.key(SWT.ARROW_RIGHT, (char) 0, 0);
		FrameOutline nudged = part.frame().orElseThrow();
		assertEquals(session.units().tapeMark(), nudged.x().minus(frame.x()));
		assertSlope(frame, nudged);
		hand.drag(edge(part, true), 8, 0);
		FrameOutline narrowed = part.frame().orElseThrow();
		assertTrue(narrowed.width().isLessThan(nudged.width()), "narrower");
		assertTrue(narrowed.right().minus(nudged.right()).abs().units() <= 1, "its right edge stays");
		assertSlope(nudged, narrowed);
		hand.key(SWT.ARROW_UP, (char) 0, 0);
		assertEquals(session.units().tapeMark(), part.frame().orElseThrow().y().minus(narrowed.y()));
	}

	@Test
	void aStudMovesOnlyAlongTheWall() {
		Room before = EcoreUtil.copy(session.room());
		Service stud = level().getServices().get(0);
		hand.drag(at(level(), Length.ofInches(49), Length.ofInches(90)), 15, 20);
		assertTrue(stud.getX().isMoreThan(Length.ofInches(48)), "moved to " + stud.getX());
		assertNull(stud.getY(), "it still runs from the floor");
		assertNull(stud.getHeight(), "to the ceiling");
		undo();
		assertEqual(before, session.room());
	}

	@Test
	void aPipeIsDraggedSizedAndNudged() {
		Service pipe = level().getServices().get(1);
		hand.drag(at(level(), Length.ofInches(104), Length.ofInches(60)), 21, -21);
		assertTrue(pipe.getX().isMoreThan(Length.ofInches(101)) && pipe.getY().isMoreThan(Length.ofInches(51)), "up and right");
		grip(pipe, false, 14);
		assertTrue(pipe.getWidth().isMoreThan(Length.ofInches(9)), "wider: " + pipe.getWidth());
		Length x = pipe.getX();
		hand.key(SWT.ARROW_LEFT, (char) 0, 0);
		assertEquals(x.minus(session.units().tapeMark()), pipe.getX());
	}

	@Test
	void oldTrimFromCornerToCornerMovesOnlyUpAndDown() {
		Room before = EcoreUtil.copy(session.room());
		ExistingTrim trim = level().getTrims().get(0);
		hand.drag(at(level(), Length.ofInches(30), Length.ofInches(83)), 30, 21);
		assertTrue(trim.getY().isLessThan(Length.ofInches(79)), "lower: " + trim.getY());
		assertNull(trim.getX());
		assertNull(trim.getWidth());
		undo();
		assertEqual(before, session.room());
		viewer.select(part(trim));
		hand.key(SWT.ARROW_UP, (char) 0, 0);
		assertEquals(Length.ofInches(80).plus(session.units().tapeMark()), trim.getY());
	}

	@Test
	void openingsFixturesAndBoxesAreDraggedAtTheirEdgesAndNudged() {
		for (Placed element : List.of(level().getOpenings().get(0), level().getFixtures().get(0), level().getBoxes().get(0))) {
			Room before = EcoreUtil.copy(session.room());
			Length x = element.getX();
			viewer.select(part(element));
			hand.key(SWT.ARROW_RIGHT, (char) 0, SWT.SHIFT);
			assertEquals(x.plus(session.units().tapeMark().times(10)), element.getX());
			undo();
			hand.drag(hand.middle(part(element)), 17, 0);
			assertTrue(element.getX().isMoreThan(x), "moved: " + element.getName());
			undo();
			if (part(element).getFigure().getBounds().width > 26 && part(element).getFigure().getBounds().height > 26) {
				Length right = element.getX().plus(element.getWidth());
				grip(element, true, 15);
				assertTrue(element.getX().isMoreThan(x), "narrower: " + element.getName());
				assertEquals(right, element.getX().plus(element.getWidth()), "its right edge stays");
				undo();
			}
			assertEqual(before, session.room());
		}
	}

	/** Takes hold of the grip in the middle of an edge. */
	private void grip(Placed element, boolean left, int dx) {
		viewer.select(part(element));
		hand.settle();
		hand.drag(edge(part(element), left), dx, 0);
	}

	/** Both edges climb as before, and lie as high over the slope. */
	private static void assertSlope(FrameOutline before, FrameOutline after) {
		double slope = (double) before.rise().units() / before.width().units();
		assertEquals(slope * after.width().units(), after.rise().units(), 2);
		assertEquals(before.y().units() + slope * after.x().minus(before.x()).units(), after.y().units(), 2);
		assertEquals(before.height().units(), after.height().units(), 2);
	}

	private Wall stair() {
		return session.room().getWalls().get(0);
	}

	private Wall level() {
		return session.room().getWalls().get(1);
	}
}
