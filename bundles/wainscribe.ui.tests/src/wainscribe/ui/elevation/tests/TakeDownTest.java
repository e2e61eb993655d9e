// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.elevation.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.eclipse.core.commands.ParameterizedCommand;
import org.eclipse.core.runtime.Adapters;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.commands.ICommandService;
import org.eclipse.ui.handlers.IHandlerService;
import org.junit.jupiter.api.Test;

import wainscribe.commands.AddElementCommand;
import wainscribe.drawing.LayerName;
import wainscribe.model.ExistingTrim;
import wainscribe.model.Room;
import wainscribe.model.TrimType;
import wainscribe.model.WainscribeFactory;
import wainscribe.model.Wall;
import wainscribe.model.length.Length;
import wainscribe.ui.elevation.table.DrawingTable;

/** Existing trim that goes is no longer drawn; that it stays is respected. */
class TakeDownTest extends OpenEditor {

	private void takeDown() throws Exception {
		page().activate(editor);
		ICommandService commands = PlatformUI.getWorkbench().getService(ICommandService.class);
		PlatformUI.getWorkbench().getService(IHandlerService.class).executeCommand(
				new ParameterizedCommand(commands.getCommand("wainscribe.ui.elevation.takeDown"), null), null);
		hand.settle();
	}

	private boolean isDrawn(Wall wall) {
		return !Adapters.adapt(editor, DrawingTable.class).drawingOf(wall).shapes(LayerName.TRIM_EXISTING).isEmpty();
	}

	@Test
	void aBaseTakenDownIsNotDrawnAndTheFramesComeDownToTheNewBase() throws Exception {
		Wall north = session.room().getWalls().get(0);
		ExistingTrim base = WainscribeFactory.eINSTANCE.createExistingTrim();
		base.setType(TrimType.BASE);
		base.setX(Length.ZERO);
		base.setY(Length.ZERO);
		base.setHeight(Length.ofInches(9));
		session.commandStack().execute(new AddElementCommand(north, base));
		hand.settle();
		assertTrue(isDrawn(north));
		Length kept = frames().getFirst().y();
		Room before = EcoreUtil.copy(session.room());
		viewer.select(part(base));
		takeDown();
		assertFalse(isDrawn(north));
		assertTrue(frames().getFirst().y().isLessThan(kept), "nothing keeps the frames up any more");
		assertEquals("Take Down base", session.commandStack().getUndoCommand().getLabel());
		assertTrue(part(base).value().startsWith("is taken down"), part(base).value());
		takeDown();
		assertTrue(isDrawn(north), "left up after all");
		undo();
		undo();
		assertEqual(before, session.room());
	}
}
