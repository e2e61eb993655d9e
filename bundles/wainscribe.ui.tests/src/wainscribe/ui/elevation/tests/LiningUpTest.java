// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.elevation.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;

import org.eclipse.core.commands.ParameterizedCommand;
import org.eclipse.core.runtime.Adapters;
import org.eclipse.draw2d.geometry.Point;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.commands.ICommandService;
import org.eclipse.ui.handlers.IHandlerService;
import org.junit.jupiter.api.Test;

import wainscribe.commands.AddElementCommand;
import wainscribe.commands.Alignment;
import wainscribe.layout.FrameOutline;
import wainscribe.layout.FrameRole;
import wainscribe.model.Box;
import wainscribe.model.BoxType;
import wainscribe.model.Placed;
import wainscribe.model.Room;
import wainscribe.model.Wall;
import wainscribe.model.WainscribeFactory;
import wainscribe.model.length.Length;
import wainscribe.ui.elevation.editparts.FrameEditPart;
import wainscribe.ui.elevation.lining.Lining;
import wainscribe.ui.elevation.table.DrawingTable;
import wainscribe.ui.elevation.table.Projection;
import wainscribe.ui.elevation.table.TableZoom;

/** Several things are lined up with the one selected last, or spaced evenly, as one step. */
class LiningUpTest extends OpenEditor {

	private Box added(Wall wall, int x, int y) {
		Box box = WainscribeFactory.eINSTANCE.createBox();
		box.setType(BoxType.RECEPTACLE);
		box.setName("outlet " + x);
		box.setX(Length.ofInches(x));
		box.setY(Length.ofInches(y));
		box.setWidth(Length.ofInches(3));
		box.setHeight(Length.ofInches(5));
		session.commandStack().execute(new AddElementCommand(wall, box));
		hand.settle();
		return box;
	}

	private Lining lining() {
		return new Lining(viewer, Adapters.adapt(editor, DrawingTable.class));
	}

	private void select(Placed... things) {
		viewer.deselectAll();
		for (Placed thing : things) {
			viewer.appendSelection(part(thing));
		}
	}

	@Test
	void platesComeInLineWithTheOneSelectedLast() throws Exception {
		Wall north = session.room().getWalls().get(0);
		Box first = north.getBoxes().get(0);
		Box second = added(north, 60, 40);
		Room before = EcoreUtil.copy(session.room());
		select(second, first);
		ICommandService commands = PlatformUI.getWorkbench().getService(ICommandService.class);
		IHandlerService handlers = PlatformUI.getWorkbench().getService(IHandlerService.class);
		page().activate(editor);
		handlers.executeCommand(new ParameterizedCommand(commands.getCommand("wainscribe.ui.elevation.lineUp.bottom"), null), null);
		hand.settle();
		assertEquals(Length.ofInches(16), second.getY());
		assertEquals(Length.ofInches(60), second.getX());
		assertEquals("Line Up Lower Edges", session.commandStack().getUndoCommand().getLabel());
		undo();
		assertEqual(before, session.room());
	}

	@Test
	void threePlatesAreSpacedEvenly() {
		Wall north = session.room().getWalls().get(0);
		Box first = north.getBoxes().get(0);
		Box second = added(north, 40, 16);
		Box third = added(north, 100, 16);
		select(first, second);
		assertFalse(lining().can(Alignment.SPACE_ALONG), "two can't be spaced");
		select(first, second, third);
		lining().run(Alignment.SPACE_ALONG);
		assertEquals(List.of(Length.ofInches(20), Length.ofInches(60), Length.ofInches(100)),
				List.of(first.getX(), second.getX(), third.getX()));
		assertFalse(lining().can(Alignment.SPACE_ALONG), "nothing is left to do");
	}

	@Test
	void framesAreLinedUpAndLockedInOneStep() {
		Wall north = session.room().getWalls().get(0);
		List<FrameEditPart> frames = part(north).things().stream().filter(FrameEditPart.class::isInstance)
				.map(FrameEditPart.class::cast).toList();
		Room before = EcoreUtil.copy(session.room());
		Placed outlet = north.getBoxes().get(0);
		viewer.deselectAll();
		viewer.appendSelection(frames.get(0));
		viewer.appendSelection(part(outlet));
		lining().run(Alignment.BOTTOM);
		List<FrameOutline> after = session.design().layout().of(north).orElseThrow().frames().toList();
		assertTrue(after.stream().allMatch(frame -> frame.role() == FrameRole.PLACED));
		assertEquals(1, after.stream().filter(frame -> frame.y().equals(outlet.getY())).count());
		undo();
		assertEqual(before, session.room());
	}

	@Test
	void thingsOfTwoWallsAreNotLinedUpAlongThem() {
		Placed here = session.room().getWalls().get(0).getBoxes().get(0);
		Placed there = session.room().getWalls().get(2).getBoxes().get(0);
		select(here, there);
		assertFalse(lining().can(Alignment.LEFT));
	}

	@Test
	void aRectangleDrawnOnTheBareWallSelectsWhatLiesInIt() {
		Wall north = session.room().getWalls().get(0);
		Box low = added(north, 60, 60);
		Box high = added(north, 80, 66);
		Adapters.adapt(editor, TableZoom.class).fitWall(north);
		hand.settle();
		Projection place = Adapters.adapt(editor, DrawingTable.class).placeOf(north);
		Point from = new Point(place.x(Length.ofInches(50)), place.y(Length.ofInches(80)));
		part(north).getFigure().translateToAbsolute(from);
		hand.drag(from, place.x(Length.ofInches(90)) - place.x(Length.ofInches(50)),
				place.y(Length.ofInches(55)) - place.y(Length.ofInches(80)));
		assertEquals(2, viewer.getSelectedEditParts().size());
		assertTrue(viewer.getSelectedEditParts().contains(part(low)) && viewer.getSelectedEditParts().contains(part(high)));
		hand.click(from);
		assertEquals(List.of(part(north)), viewer.getSelectedEditParts());
	}
}
