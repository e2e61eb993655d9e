// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.elevation.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;

import org.eclipse.core.runtime.Adapters;
import org.eclipse.draw2d.geometry.Point;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.gef.AccessibleEditPart;
import org.eclipse.gef.GraphicalViewer;
import org.eclipse.gef.Request;
import org.eclipse.gef.commands.Command;
import org.eclipse.jface.action.IAction;
import org.eclipse.swt.SWT;
import org.eclipse.swt.accessibility.ACC;
import org.eclipse.swt.accessibility.AccessibleEvent;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.actions.ActionFactory;
import org.eclipse.ui.part.FileEditorInput;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

import wainscribe.commands.SetFeatureCommand;
import wainscribe.commands.SetGapCommand;
import wainscribe.drawing.LayerName;
import wainscribe.layout.FrameOutline;
import wainscribe.layout.FrameRole;
import wainscribe.layout.Tier;
import wainscribe.model.BoxType;
import wainscribe.model.Placed;
import wainscribe.model.Room;
import wainscribe.model.Wall;
import wainscribe.model.WainscribePackage.Literals;
import wainscribe.model.length.Length;
import wainscribe.ui.ElementSelector;
import wainscribe.ui.elevation.ElevationEditor;
import wainscribe.ui.elevation.editparts.FrameEditPart;
import wainscribe.ui.elevation.editparts.RailEditPart;
import wainscribe.ui.elevation.editparts.ThingEditPart;
import wainscribe.ui.elevation.editparts.WallEditPart;
import wainscribe.ui.elevation.policies.FrameLockEditPolicy;
import wainscribe.ui.elevation.policies.NudgeRequest;
import wainscribe.ui.elevation.table.DrawingTable;
import wainscribe.ui.elevation.table.FrameKey;
import wainscribe.ui.elevation.table.LayerGroup;
import wainscribe.ui.elevation.table.Projection;
import wainscribe.ui.elevation.table.TableZoom;
import wainscribe.ui.elevation.tools.AddTool;
import wainscribe.ui.elevation.tools.NewThings;
import wainscribe.ui.session.RoomSession;

/** The real editor on a real room: dragged, typed at, undone, saved and opened again. */
class ElevationEditorTest {

	private Schoolroom home;
	private ElevationEditor editor;
	private RoomSession session;
	private GraphicalViewer viewer;
	private Hand hand;

	@BeforeEach
	void open() throws Exception {
		home = Schoolroom.create("schoolhouse-" + System.nanoTime());
		show();
	}

	@AfterEach
	void close() throws Exception {
		page().closeEditor(editor, false);
		home.delete();
	}

	private void show() throws Exception {
		editor = (ElevationEditor) page().openEditor(new FileEditorInput(home.file()), ElevationEditor.ID);
		session = Adapters.adapt(editor, RoomSession.class);
		viewer = editor.getGraphicalViewer();
		hand = new Hand(viewer);
		hand.settle();
		Adapters.adapt(editor, TableZoom.class).zoomTo(16);
		hand.settle();
	}

	@Test
	void showsEveryWallInWalkingOrderWithWhatIsOnIt() {
		List<Wall> walls = session.room().getWalls();
		DrawingTable table = Adapters.adapt(editor, DrawingTable.class);
		for (int i = 1; i < walls.size(); i++) {
			assertTrue(table.placeOf(walls.get(i - 1)).left() < table.placeOf(walls.get(i)).left());
		}
		for (Wall wall : walls) {
			long frames = session.design().layout().of(wall).orElseThrow().frames().count();
			assertEquals(frames, part(wall).things().stream().filter(FrameEditPart.class::isInstance).count(), wall.getName());
		}
		assertTrue(frames().size() > 8, "a room of this size takes many frames");
	}

	@Test
	void everyPartHasANameAndNumbersForScreenReaders() {
		for (Wall wall : session.room().getWalls()) {
			for (ThingEditPart thing : part(wall).things()) {
				AccessibleEditPart accessible = Adapters.adapt(thing, AccessibleEditPart.class);
				AccessibleEvent name = new AccessibleEvent(this);
				name.childID = ACC.CHILDID_SELF;
				accessible.getName(name);
				assertFalse(name.result == null || name.result.isBlank(), "name of " + thing.getModel());
				assertFalse(thing.value().isBlank(), "numbers of " + thing.getModel());
				assertFalse(thing.value().contains("{"), thing.value());
			}
		}
	}

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
	void findingsSelectWhatTheySpeakOf() {
		ElementSelector selector = Adapters.adapt(editor, ElementSelector.class);
		selector.select("south", "outlet 2");
		assertSame(session.room().getWalls().get(2).getBoxes().get(0), selected().getModel());
		selector.select("north", "rail");
		assertTrue(selected() instanceof RailEditPart rail && "north".equals(rail.wall().getName()));
		String frame = session.design().layout().of(session.room().getWalls().get(1)).orElseThrow().frames().findFirst()
				.orElseThrow().id();
		selector.select("east", frame);
		assertTrue(selected() instanceof FrameEditPart part && part.frame().orElseThrow().id().equals(frame));
		selector.select("west", "");
		assertSame(session.room().getWalls().get(3), viewer.getFocusEditPart().getModel());
	}

	@Test
	void pageKeysGoFromWallToWallAndTabAlongOne() {
		viewer.select(part(session.room().getWalls().get(0)));
		hand.key(SWT.PAGE_DOWN, (char) 0, 0);
		assertEquals("east", ((Wall) viewer.getFocusEditPart().getModel()).getName());
		hand.key(SWT.PAGE_UP, (char) 0, 0);
		hand.key(SWT.PAGE_UP, (char) 0, 0);
		assertEquals("west", ((Wall) viewer.getFocusEditPart().getModel()).getName());
		hand.key(SWT.HOME, (char) 0, 0);
		hand.tab();
		assertSame(session.room().getWalls().get(0), selected().wall());
		hand.key(SWT.END, (char) 0, 0);
		assertEquals("west", ((Wall) viewer.getFocusEditPart().getModel()).getName());
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
	void whatTheLayoutCannotDoIsSaidOverTheDrawing() {
		session.commandStack().execute(new SetGapCommand(session.room(), Length.ofInches(40)));
		hand.settle();
		String reason = session.design().layout().infeasible().get(0).reason();
		assertTrue(tips(viewer.getControl().getParent().getParent()).anyMatch(tip -> tip.startsWith(reason)), reason);
		assertTrue(part(session.room().getWalls().get(0)).things().size() > 1, "what is there is still drawn");
		undo();
		assertTrue(tips(viewer.getControl().getParent().getParent()).noneMatch(tip -> tip.startsWith(reason)), reason);
	}

	@Test
	void hiddenLayersAreNotDrawn() {
		DrawingTable table = Adapters.adapt(editor, DrawingTable.class);
		Wall north = session.room().getWalls().get(0);
		assertFalse(table.drawingOf(north).shapes(LayerName.DIMENSION).isEmpty());
		table.show(LayerGroup.DIMENSIONS.layers(), false);
		hand.settle();
		assertTrue(table.drawingOf(north).shapes(LayerName.DIMENSION).isEmpty());
		table.show(LayerGroup.DIMENSIONS.layers(), true);
		assertFalse(table.drawingOf(north).shapes(LayerName.DIMENSION).isEmpty());
	}

	@Test
	void savedClosedAndOpenedAgainNothingMoved() throws Exception {
		Placed outlet = session.room().getWalls().get(0).getBoxes().get(0);
		hand.drag(hand.middle(part(outlet)), 97, 0);
		hand.drag(hand.middle(thing(session.room().getWalls().get(0), RailEditPart.class)), 0, -40);
		editor.doSave(null);
		assertFalse(editor.isDirty());
		Room saved = EcoreUtil.copy(session.room());
		List<FrameOutline> frames = frames();
		page().closeEditor(editor, false);
		show();
		assertEqual(saved, session.room());
		assertEquals(frames, frames());
	}

	@Test
	void closedWithoutSavingTheRoomStaysAsItWas() throws Exception {
		Room before = EcoreUtil.copy(session.room());
		hand.drag(hand.middle(part(session.room().getWalls().get(0).getBoxes().get(0))), 97, 0);
		page().closeEditor(editor, false);
		show();
		assertEqual(before, session.room());
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

	@Test
	void onlyWhatChangedIsPaintedAgain() {
		Wall north = session.room().getWalls().get(0);
		Wall south = session.room().getWalls().get(2);
		DrawingTable table = Adapters.adapt(editor, DrawingTable.class);
		Object other = table.drawingOf(south);
		Placed outlet = north.getBoxes().get(0);
		hand.middle(part(outlet));
		hand.settle();
		PaintWatch watch = PaintWatch.on(viewer);
		session.commandStack().execute(new SetFeatureCommand(outlet, Literals.PLACED__Y, Length.ofInches(17), "Height"));
		viewer.flush();
		assertEquals(other, table.drawingOf(south), "the other wall is drawn the same");
		assertTrue(watch.painted().intersects(part(outlet).getFigure().getBounds()), "the outlet is painted again");
		assertFalse(watch.painted().intersects(table.placeOf(south).pixels(table.drawingOf(south).wall())),
				"the other wall is not: " + watch.painted());
		watch.stop();
	}

	private void undo() {
		editor.getActionRegistry().getAction(ActionFactory.UNDO.getId()).run();
		hand.settle();
	}

	private void redo() {
		editor.getActionRegistry().getAction(ActionFactory.REDO.getId()).run();
		hand.settle();
	}

	private List<FrameOutline> frames() {
		return session.design().layout().frames().toList();
	}

	private WallEditPart part(Wall wall) {
		return (WallEditPart) viewer.getEditPartRegistry().get(wall);
	}

	private ThingEditPart part(Placed element) {
		return (ThingEditPart) viewer.getEditPartRegistry().get(element);
	}

	private <T extends ThingEditPart> T thing(Wall wall, Class<T> kind) {
		return part(wall).things().stream().filter(kind::isInstance).map(kind::cast).findFirst().orElseThrow();
	}

	private ThingEditPart selected() {
		return (ThingEditPart) viewer.getFocusEditPart();
	}

	private Text field() {
		for (Control child : ((Composite) viewer.getControl()).getChildren()) {
			if (child instanceof Composite box) {
				for (Control inner : box.getChildren()) {
					if (inner instanceof Text text) {
						return text;
					}
				}
			}
		}
		throw new AssertionError("no field to type in");
	}

	private static Stream<String> tips(Composite parent) {
		return Stream.of(parent.getChildren()).filter(Control::isVisible).map(Control::getToolTipText).filter(Objects::nonNull);
	}

	private static void assertEqual(Room expected, Room actual) {
		assertTrue(new EcoreUtil.EqualityHelper().equals(expected, actual), "the equal room");
	}

	private static IWorkbenchPage page() {
		return PlatformUI.getWorkbench().getWorkbenchWindows()[0].getActivePage();
	}
}
