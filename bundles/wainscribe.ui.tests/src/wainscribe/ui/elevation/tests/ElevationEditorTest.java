// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.elevation.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;

import org.eclipse.core.runtime.Adapters;
import org.eclipse.draw2d.FigureCanvas;
import org.eclipse.draw2d.Viewport;
import org.eclipse.draw2d.geometry.Rectangle;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.gef.AccessibleEditPart;
import org.eclipse.swt.SWT;
import org.eclipse.swt.accessibility.ACC;
import org.eclipse.swt.accessibility.AccessibleEvent;
import org.eclipse.ui.part.FileEditorInput;
import org.junit.jupiter.api.Test;

import wainscribe.commands.SetFeatureCommand;
import wainscribe.commands.SetGapCommand;
import wainscribe.drawing.Drawing;
import wainscribe.drawing.LayerName;
import wainscribe.layout.FrameOutline;
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
import wainscribe.ui.elevation.table.DrawingTable;
import wainscribe.ui.elevation.table.LayerGroup;

/** What the real editor shows and speaks of a real room, and that saving and reopening moves nothing. */
class ElevationEditorTest extends OpenEditor {

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

	@Test
	void opensAtTheScaleItKeepsAndDrawsEachWallOnce() throws Exception {
		page().closeEditor(editor, false);
		editor = (ElevationEditor) page().openEditor(new FileEditorInput(home.file()), ElevationEditor.ID);
		DrawingTable table = Adapters.adapt(editor, DrawingTable.class);
		double scale = table.scale();
		List<Drawing> drawings = table.walls().stream().map(table::drawingOf).toList();
		viewer = editor.getGraphicalViewer();
		new Hand(viewer).settle();
		assertEquals(scale, table.scale());
		for (int i = 0; i < drawings.size(); i++) {
			assertSame(drawings.get(i), table.drawingOf(table.walls().get(i)));
		}
		Viewport port = ((FigureCanvas) viewer.getControl()).getViewport();
		Rectangle view = new Rectangle(port.getViewLocation(), port.getClientArea().getSize());
		Rectangle first = table.placeOf(table.walls().getFirst()).pixels(drawings.getFirst().extent());
		assertTrue(view.contains(first), "the first wall is seen whole");
	}
}
