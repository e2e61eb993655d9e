// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.profile.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.eclipse.core.resources.IResource;
import org.eclipse.core.runtime.Adapters;
import org.eclipse.gef.EditPart;
import org.eclipse.swt.SWT;
import org.eclipse.ui.IEditorPart;
import org.eclipse.ui.PlatformUI;
import org.junit.jupiter.api.Test;

import wainscribe.commands.ChooseProfileCommand;
import wainscribe.drawing.Drawing;
import wainscribe.model.ProfileUse;
import wainscribe.model.Room;
import wainscribe.model.Wall;
import wainscribe.model.WainscribeFactory;
import wainscribe.model.storage.HomeFolder;
import wainscribe.ui.ProfileEditors;
import wainscribe.ui.RoomEditors;
import wainscribe.ui.elevation.table.DrawingTable;
import wainscribe.ui.profile.desk.NodeKey;
import wainscribe.ui.session.HomeSession;
import wainscribe.ui.session.HomeSessions;
import wainscribe.ui.session.RoomSession;

/** What is drawn on the desk is seen on the elevation as soon as it is saved. */
class RoomFollowsProfileTest extends OpenDesk {

	@Test
	void aSavedProfileIsLaidOutAndDrawnAnew() throws Exception {
		addRoom();
		HomeSessions sessions = PlatformUI.getWorkbench().getWorkbenchWindows()[0].getService(HomeSessions.class);
		HomeSession home = sessions.openHome(project);
		home.reload(null);
		RoomSession room = home.rooms().getFirst();
		IEditorPart elevation = RoomEditors.open(page(), room, true);
		settle();
		room.commandStack().execute(new ChooseProfileCommand(room.room(), ProfileUse.FRAME, "strip"));
		settle();
		assertEquals(mm(12), room.design().brief().frame().thickness());
		Wall wall = room.room().getWalls().getFirst();
		DrawingTable table = Adapters.adapt(elevation, DrawingTable.class);
		Drawing before = table.drawingOf(wall);
		ProfileEditors.open(page(), file);
		viewer.select((EditPart) viewer.getEditPartRegistry().get(new NodeKey.OfSegment(1)));
		key(SWT.ARROW_RIGHT, SWT.SHIFT);
		key('a');
		editor.doSave(null);
		long end = System.nanoTime() + 10_000_000_000L;
		while (room.design().brief().frame().thickness().equals(mm(12)) && System.nanoTime() < end) {
			settle();
		}
		assertTrue(room.design().brief().frame().thickness().isMoreThan(mm(22)), room.design().brief().frame().toString());
		assertNotEquals(before, table.drawingOf(wall));
		page().closeEditor(elevation, false);
		sessions.close(home);
	}

	private void addRoom() throws Exception {
		HomeFolder folder = HomeFolder.open(project.getLocation().toPath());
		Room room = WainscribeFactory.eINSTANCE.createRoom();
		room.setId("room");
		room.setName("Map room");
		room.setHeight(mm(2400));
		for (String name : new String[] { "A", "B", "C", "D" }) {
			Wall wall = WainscribeFactory.eINSTANCE.createWall();
			wall.setId("wall-" + name);
			wall.setName(name);
			wall.setLength(mm(3000));
			room.getWalls().add(wall);
		}
		folder.home().getBrief().setPattern("frames-under-rail");
		folder.add(room);
		folder.save();
		project.refreshLocal(IResource.DEPTH_INFINITE, null);
	}
}
