// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.elevation.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;

import org.eclipse.core.runtime.Adapters;
import org.eclipse.draw2d.geometry.Point;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.gef.Request;
import org.eclipse.gef.commands.Command;
import org.eclipse.jface.action.IAction;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.actions.ActionFactory;
import org.junit.jupiter.api.Test;

import wainscribe.commands.SetFeatureCommand;
import wainscribe.layout.FrameOutline;
import wainscribe.layout.FrameRole;
import wainscribe.layout.Tier;
import wainscribe.model.BoxType;
import wainscribe.model.Placed;
import wainscribe.model.Room;
import wainscribe.model.Wall;
import wainscribe.model.WainscribePackage.Literals;
import wainscribe.model.length.Length;
import wainscribe.ui.elevation.editparts.FrameEditPart;
import wainscribe.ui.elevation.editparts.RailEditPart;
import wainscribe.ui.elevation.policies.FrameLockEditPolicy;
import wainscribe.ui.elevation.policies.NudgeRequest;
import wainscribe.ui.elevation.table.DrawingTable;
import wainscribe.ui.elevation.table.FrameKey;
import wainscribe.ui.elevation.table.Projection;
import wainscribe.ui.elevation.tools.AddTool;
import wainscribe.ui.elevation.tools.NewThings;

/** The real editor on a real room: dragged, nudged, typed at, and undone to the equal room. */
class ElevationEditingTest extends OpenEditor {

	@Test
	void aDraggedOutletMovesAndTheRoomIsLaidOutAgain() {
		Room before = EcoreUtil.copy(session.room());
		List<FrameOutline> framesBefore = frames();
		Wall north = session.room().getWalls().get(0);
		Placed outlet = north.getBoxes().get(0);
		Length between = FrameKey.frames(session.design(), north, Tier.LOWER).get(3).right();
		Projection place = Adapters.adapt(editor, DrawingTable.class).placeOf(north);
		hand.drag(hand.middle(part(outlet)), place.x(between) - place.x(outlet.getX()), 0);
		assertTrue(outlet.getX().minus(between).abs().isLessThan(Length.ofInches(2)), outlet.getX() + " is near " + between);
		assertEquals(Length.ofInches(16), outlet.getY());
		assertEquals("Move outlet", session.commandStack().getUndoCommand().getLabel());
		assertNotEquals(framesBefore, frames());
		undo();
		assertEqual(before, session.room());
		assertEquals(framesBefore, frames());
	}

	@Test
	void whileItIsDraggedOnlyTheDrawingChanges() {
		Room before = EcoreUtil.copy(session.room());
		DrawingTable table = Adapters.adapt(editor, DrawingTable.class);
		Wall wall = session.room().getWalls().get(0);
		Object drawn = table.drawingOf(wall);
		Point start = hand.middle(part(wall.getBoxes().get(0)));
		hand.dragTo(start, 97, 0);
		assertNotEquals(drawn, table.drawingOf(wall));
		assertEqual(before, session.room());
		assertFalse(session.commandStack().canUndo());
		hand.key(SWT.ESC, SWT.ESC, 0);
		hand.drop(new Point(start.x + 97, start.y));
		assertEquals(drawn, table.drawingOf(wall));
		assertFalse(session.commandStack().canUndo());
	}

	@Test
	void theDraggedRailBecomesADecisionOfTheRoom() {
		Length top = session.design().layout().rail().orElseThrow().top();
		Room before = EcoreUtil.copy(session.room());
		RailEditPart rail = thing(session.room().getWalls().get(0), RailEditPart.class);
		hand.drag(hand.middle(rail), 0, -40);
		Length moved = session.design().layout().rail().orElseThrow().top();
		assertTrue(moved.isMoreThan(top), top + " to " + moved);
		assertEquals(moved, session.room().getBrief().getRail());
		undo();
		assertNull(session.room().getBrief());
		assertEqual(before, session.room());
		redo();
		assertEquals(moved, session.room().getBrief().getRail());
	}

	@Test
	void aDraggedFrameLocksItsTierAndCanBeGivenBack() {
		Wall wall = session.room().getWalls().get(0);
		List<FrameOutline> before = session.design().layout().of(wall).orElseThrow().frames().toList();
		FrameEditPart frame = thing(wall, FrameEditPart.class);
		Room untouched = EcoreUtil.copy(session.room());
		viewer.select(frame);
		hand.drag(hand.middle(frame), 9, 0);
		assertEquals(before.size(), wall.getPlacedFrames().size());
		List<FrameOutline> after = session.design().layout().of(wall).orElseThrow().frames().toList();
		assertTrue(after.stream().allMatch(one -> one.role() == FrameRole.PLACED));
		assertEquals(1, after.stream().filter(one -> before.stream().noneMatch(old -> old.x().equals(one.x()))).count(),
				"only the dragged one moves");
		Command release = thing(wall, FrameEditPart.class).getCommand(new Request(FrameLockEditPolicy.RELEASE));
		assertTrue(release.canExecute());
		viewer.getEditDomain().getCommandStack().execute(release);
		assertEqual(untouched, session.room());
		assertEquals("Let the Room Decide Again", session.commandStack().getUndoCommand().getLabel());
	}

	@Test
	void arrowKeysNudgeByTapeMarks() {
		Placed outlet = session.room().getWalls().get(0).getBoxes().get(0);
		viewer.select(part(outlet));
		hand.key(SWT.ARROW_RIGHT, (char) 0, 0);
		assertEquals(Length.ofInches(20 * 16 + 1, 16), outlet.getX());
		hand.key(SWT.ARROW_UP, (char) 0, SWT.MOD1);
		assertEquals(Length.ofInches(16 * 16 + 10, 16), outlet.getY());
		hand.key(SWT.ARROW_LEFT, (char) 0, SWT.SHIFT);
		assertEquals(Length.ofInches(20 * 16 - 9, 16), outlet.getX());
		undo();
		undo();
		undo();
		assertFalse(session.commandStack().canUndo());
		assertEquals(Length.ofInches(20), outlet.getX());
	}

	@Test
	void nothingIsNudgedOffItsWall() {
		Placed outlet = session.room().getWalls().get(0).getBoxes().get(0);
		Command command = part(outlet).getCommand(new NudgeRequest(Length.ofInches(-500), Length.ofInches(-500)));
		viewer.getEditDomain().getCommandStack().execute(command);
		assertEquals(Length.ZERO, outlet.getX());
		assertEquals(Length.ZERO, outlet.getY());
	}

	@Test
	void aNumberIsTypedOverTheDrawing() {
		Placed outlet = session.room().getWalls().get(0).getBoxes().get(0);
		Point at = hand.middle(part(outlet));
		hand.doubleClick(at);
		Text field = field();
		field.setText("two feet");
		field.notifyListeners(SWT.DefaultSelection, new Event());
		assertEquals(Length.ofInches(20), outlet.getX());
		assertFalse(field.isDisposed(), "what is no length can be mended");
		field.setText("24 + 3/8");
		field.notifyListeners(SWT.DefaultSelection, new Event());
		hand.settle();
		assertEquals(Length.ofInches(195, 8), outlet.getX());
		assertTrue(field.isDisposed());
		assertEquals("Move outlet", session.commandStack().getUndoCommand().getLabel());
	}

	@Test
	void whatIsTypedElsewhereIsAStepOfTheSameHistory() {
		Placed outlet = session.room().getWalls().get(0).getBoxes().get(0);
		int before = part(outlet).getFigure().getBounds().x;
		session.commandStack().execute(new SetFeatureCommand(outlet, Literals.PLACED__X, Length.ofInches(50), "From the left"));
		hand.settle();
		assertTrue(part(outlet).getFigure().getBounds().x > before, "the drawing follows");
		IAction action = editor.getActionRegistry().getAction(ActionFactory.UNDO.getId());
		assertTrue(action.isEnabled());
		assertTrue(action.getText().contains("From the left"), action.getText());
		assertTrue(editor.isDirty());
		undo();
		assertEquals(before, part(outlet).getFigure().getBounds().x);
		assertFalse(editor.isDirty());
	}

	@Test
	void deleteTakesAThingOffItsWallAndUndoPutsItBack() {
		Wall wall = session.room().getWalls().get(0);
		Room before = EcoreUtil.copy(session.room());
		viewer.select(part(wall.getBoxes().get(0)));
		editor.getActionRegistry().getAction(ActionFactory.DELETE.getId()).run();
		assertEquals(List.of(), wall.getBoxes());
		undo();
		assertEqual(before, session.room());
	}

	@Test
	void aNewOutletIsPutWhereTheWallIsClickedAndIsSelected() {
		Wall south = session.room().getWalls().get(2);
		NewThings things = new NewThings(session.home(), session.room());
		Point at = hand.middle(thing(south, FrameEditPart.class));
		viewer.getEditDomain().setActiveTool(new AddTool(() -> things.box(BoxType.RECEPTACLE)));
		hand.click(at);
		assertEquals(2, south.getBoxes().size());
		Placed outlet = south.getBoxes().get(1);
		assertEquals("outlet 3", outlet.getName());
		assertSame(outlet, selected().getModel());
		assertSame(viewer.getEditDomain().getDefaultTool(), viewer.getEditDomain().getActiveTool());
		assertEquals("Add outlet", session.commandStack().getUndoCommand().getLabel());
		undo();
		assertEquals(1, south.getBoxes().size());
	}

	@Test
	void undoneToTheBeginningAndRedoneToTheEndTheRoomIsEqual() {
		Room first = EcoreUtil.copy(session.room());
		Wall wall = session.room().getWalls().get(0);
		hand.drag(hand.middle(part(wall.getBoxes().get(0))), 97, 0);
		hand.drag(hand.middle(thing(wall, RailEditPart.class)), 0, -24);
		viewer.select(part(session.room().getWalls().get(2).getFixtures().get(0)));
		hand.key(SWT.ARROW_LEFT, (char) 0, SWT.MOD1);
		hand.drag(hand.middle(thing(wall, FrameEditPart.class)), 7, 0);
		Room last = EcoreUtil.copy(session.room());
		while (session.commandStack().canUndo()) {
			undo();
		}
		assertEqual(first, session.room());
		while (session.commandStack().canRedo()) {
			redo();
		}
		assertEqual(last, session.room());
	}
}
