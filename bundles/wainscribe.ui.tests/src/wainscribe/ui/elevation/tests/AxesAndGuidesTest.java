// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.elevation.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Stream;

import org.eclipse.core.commands.ParameterizedCommand;
import org.eclipse.core.runtime.Adapters;
import org.eclipse.draw2d.geometry.Point;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.gef.EditDomain;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.actions.ActionFactory;
import org.eclipse.ui.commands.ICommandService;
import org.eclipse.ui.handlers.IHandlerService;
import org.junit.jupiter.api.Test;

import wainscribe.model.Axis;
import wainscribe.model.Guide;
import wainscribe.model.Placed;
import wainscribe.model.Room;
import wainscribe.model.Wall;
import wainscribe.model.length.Length;
import wainscribe.ui.elevation.editparts.LineEditPart;
import wainscribe.ui.elevation.table.DrawingTable;
import wainscribe.ui.elevation.table.Overlay;
import wainscribe.ui.elevation.table.Projection;
import wainscribe.ui.elevation.table.TableZoom;
import wainscribe.ui.elevation.tools.AddAxisTool;

/** Axes are marked and say what is centred on them; guides are pulled out of the rulers, moved, typed and taken away. */
class AxesAndGuidesTest extends OpenEditor {

	private Wall north() {
		return session.room().getWalls().get(0);
	}

	private DrawingTable table() {
		return Adapters.adapt(editor, DrawingTable.class);
	}

	/** Returns where a place of a wall is on the viewer's control, with the whole wall in view. */
	private Point over(Wall wall, Length x, Length y) {
		Adapters.adapt(editor, TableZoom.class).fitWall(wall);
		hand.settle();
		Projection place = table().placeOf(wall);
		Point point = new Point(place.x(x), place.y(y));
		part(wall).getFigure().translateToAbsolute(point);
		return point;
	}

	private void run(String command) throws Exception {
		page().activate(editor);
		ICommandService commands = PlatformUI.getWorkbench().getService(ICommandService.class);
		PlatformUI.getWorkbench().getService(IHandlerService.class)
				.executeCommand(new ParameterizedCommand(commands.getCommand("wainscribe.ui.elevation." + command), null), null);
		hand.settle();
	}

	/** Pulls out of the ruler at the top or at the side to a point of the drawing. */
	private void pull(boolean level, Point to) {
		Control ruler = Stream.of(viewer.getControl().getParent().getChildren())
				.filter(child -> child.getToolTipText() != null && child.getToolTipText().contains(level ? "level" : "plumb"))
				.findFirst().orElseThrow();
		org.eclipse.swt.graphics.Point target = ruler.getDisplay().map(viewer.getControl(), ruler, to.x, to.y);
		mouse(ruler, SWT.MouseDown, new Point(5, 5));
		mouse(ruler, SWT.MouseMove, new Point(target.x, target.y));
		mouse(ruler, SWT.MouseUp, new Point(target.x, target.y));
		hand.settle();
	}

	private static void mouse(Control control, int type, Point at) {
		Event event = new Event();
		event.x = at.x;
		event.y = at.y;
		event.button = 1;
		control.notifyListeners(type, event);
	}

	@Test
	void anAxisIsMarkedByAClickAndSaysWhatIsOffCentre() {
		Room before = EcoreUtil.copy(session.room());
		EditDomain domain = viewer.getEditDomain();
		domain.setActiveTool(new AddAxisTool());
		hand.click(over(north(), Length.ofInches(72), Length.ofInches(60)));
		Axis axis = north().getAxes().get(0);
		assertEquals(Length.ofInches(72), axis.getAt(), "drawn to the middle of the wall");
		LineEditPart part = (LineEditPart) viewer.getFocusEditPart();
		assertEquals("axis", part.name());
		assertTrue(part.value().contains("centred on it"), part.value());
		assertEquals("Add axis", session.commandStack().getUndoCommand().getLabel());
		hand.key(SWT.ARROW_RIGHT, (char) 0, SWT.MOD1);
		assertEquals(Length.ofInches(72 * 16 + 10, 16), axis.getAt());
		assertTrue(part.value().contains("off centre, 5/8\" to the left"), part.value());
		undo();
		undo();
		assertEqual(before, session.room());
	}

	@Test
	void aLevelGuideIsPulledOutMovedTypedAndDroppedOnTheRuler() {
		Room before = EcoreUtil.copy(session.room());
		pull(true, over(north(), Length.ofInches(60), Length.ofInches(70)));
		Guide guide = session.room().getGuides().get(0);
		assertTrue(guide.getAt().minus(Length.ofInches(70)).abs().isLessThan(Length.ofInches(1)), guide.getAt().toString());
		LineEditPart part = (LineEditPart) viewer.getFocusEditPart();
		Length was = guide.getAt();
		hand.drag(hand.middle(part), 0, 60);
		assertTrue(guide.getAt().isLessThan(was), "dragged down");
		hand.key(SWT.CR, SWT.CR, 0);
		Text field = field();
		field.setText("50");
		field.notifyListeners(SWT.DefaultSelection, new Event());
		hand.settle();
		assertEquals(Length.ofInches(50), guide.getAt());
		Point middle = hand.middle((LineEditPart) viewer.getFocusEditPart());
		hand.drag(middle, 0, -middle.y - 8);
		assertTrue(session.room().getGuides().isEmpty(), "dropped on the ruler");
		assertEquals("Remove guide", session.commandStack().getUndoCommand().getLabel());
		undo();
		undo();
		undo();
		undo();
		assertEqual(before, session.room());
	}

	@Test
	void thingsAreDrawnToAPlumbGuideUntilItIsHidden() {
		pull(false, over(north(), Length.ofInches(110), Length.ofInches(80)));
		Guide guide = north().getGuides().get(0);
		hand.key(SWT.CR, SWT.CR, 0);
		field().setText("41 3/8");
		field().notifyListeners(SWT.DefaultSelection, new Event());
		hand.settle();
		Placed outlet = north().getBoxes().get(0);
		Projection place = table().placeOf(north());
		hand.drag(hand.middle(part(outlet)), place.x(guide.getAt()) - place.x(outlet.getX()), 0);
		assertEquals(guide.getAt(), outlet.getX(), "drawn to the guide");
		table().overlays().show(Overlay.GUIDES, false);
		hand.settle();
		assertTrue(part(north()).things().stream().noneMatch(LineEditPart.class::isInstance));
	}

	@Test
	void byKeyboardAloneAGuideIsLaidTypedAndDeleted() throws Exception {
		viewer.select(part(north().getBoxes().get(0)));
		run("addPlumbGuide");
		field().setText("30");
		field().notifyListeners(SWT.DefaultSelection, new Event());
		hand.settle();
		assertEquals(List.of(Length.ofInches(30)), north().getGuides().stream().map(Guide::getAt).toList());
		assertEquals("2' 6\" from the left", ((LineEditPart) viewer.getFocusEditPart()).value());
		editor.getActionRegistry().getAction(ActionFactory.DELETE.getId()).run();
		hand.settle();
		assertTrue(north().getGuides().isEmpty());
		run("showGuides");
		assertFalse(table().overlays().shows(Overlay.GUIDES));
	}

	@Test
	void guidesAndAxesAreSavedWithTheRoom() throws Exception {
		run("addAxis");
		run("addLevelGuide");
		editor.doSave(null);
		page().closeEditor(editor, false);
		show();
		assertEquals(1, north().getAxes().size());
		assertEquals(1, session.room().getGuides().size());
	}
}
