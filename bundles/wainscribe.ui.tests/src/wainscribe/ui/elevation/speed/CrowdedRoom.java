// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.elevation.speed;

import java.io.IOException;
import java.util.List;

import org.eclipse.core.resources.IFile;
import org.eclipse.core.resources.IProject;
import org.eclipse.core.resources.IResource;
import org.eclipse.core.resources.ResourcesPlugin;
import org.eclipse.core.runtime.CoreException;

import wainscribe.model.Box;
import wainscribe.model.BoxType;
import wainscribe.model.Brief;
import wainscribe.model.Fixture;
import wainscribe.model.FixtureType;
import wainscribe.model.Home;
import wainscribe.model.Opening;
import wainscribe.model.OpeningKind;
import wainscribe.model.Placed;
import wainscribe.model.Room;
import wainscribe.model.Service;
import wainscribe.model.ServiceKind;
import wainscribe.model.Wall;
import wainscribe.model.WainscribeFactory;
import wainscribe.model.length.Length;
import wainscribe.model.length.LengthUnit;
import wainscribe.model.storage.HomeFolder;

/** A home with one room of eight long walls, each with more than 40 elements: two windows, outlets, hooks, studs and frames. */
final class CrowdedRoom {

	private static final WainscribeFactory MAKE = WainscribeFactory.eINSTANCE;
	private static final int WALLS = 8;
	private static final int WINDOWS = 2;
	private static final int OUTLETS = 12;
	private static final int HOOKS = 4;
	private static final int STUDS = 14;

	private final IProject project;

	private CrowdedRoom(IProject project) {
		this.project = project;
	}

	/** Makes the home in a new project. */
	static CrowdedRoom create(String name) throws CoreException, IOException {
		IProject project = ResourcesPlugin.getWorkspace().getRoot().getProject(name);
		project.create(null);
		project.open(null);
		Home home = MAKE.createHome();
		home.setId(name);
		home.setName("Crowded schoolhouse");
		home.setUnits(LengthUnit.MILLIMETRE);
		Brief brief = MAKE.createBrief();
		brief.setId("brief");
		brief.setPattern("frames-two-tier");
		brief.setRail(mm(950));
		home.setBrief(brief);
		HomeFolder folder = HomeFolder.create(project.getLocation().toPath(), home);
		folder.add(room());
		folder.save();
		project.refreshLocal(IResource.DEPTH_INFINITE, null);
		return new CrowdedRoom(project);
	}

	/** Returns the room's file. */
	IFile file() throws CoreException {
		return List.of(project.getFolder(HomeFolder.ROOMS_FOLDER).members()).stream().filter(IFile.class::isInstance)
				.filter(member -> HomeFolder.ROOM_EXTENSION.equals(member.getFileExtension())).map(IFile.class::cast)
				.findFirst().orElseThrow();
	}

	/** Removes the project and its files. */
	void delete() throws CoreException {
		project.delete(true, true, null);
	}

	private static Room room() {
		Room room = MAKE.createRoom();
		room.setId("room");
		room.setName("Assembly hall");
		room.setHeight(mm(2700));
		for (int number = 1; number <= WALLS; number++) {
			room.getWalls().add(wall("wall " + number));
		}
		return room;
	}

	private static Wall wall(String name) {
		Wall wall = MAKE.createWall();
		wall.setId(name);
		wall.setName(name);
		wall.setLength(mm(6000));
		for (int i = 0; i < WINDOWS; i++) {
			Opening window = MAKE.createOpening();
			window.setKind(OpeningKind.WINDOW);
			window.setCasing(mm(70));
			wall.getOpenings().add(placed(window, name + " window " + i, 1200 + 2600 * i, 1000, 900, 1200));
		}
		for (int i = 0; i < OUTLETS; i++) {
			Box outlet = MAKE.createBox();
			outlet.setType(BoxType.RECEPTACLE);
			wall.getBoxes().add(placed(outlet, name + " outlet " + i, 150 + 480 * i, 300, 70, 114));
		}
		for (int i = 0; i < HOOKS; i++) {
			Fixture hook = MAKE.createFixture();
			hook.setType(FixtureType.ROBE_HOOK);
			wall.getFixtures().add(placed(hook, name + " hook " + i, 300 + 1400 * i, 1700, 50, 80));
		}
		for (int i = 0; i < STUDS; i++) {
			Service stud = MAKE.createService();
			stud.setKind(ServiceKind.STUD);
			stud.setId(name + " stud " + i);
			stud.setX(mm(100 + 400L * i));
			stud.setY(Length.ZERO);
			wall.getServices().add(stud);
		}
		return wall;
	}

	private static <T extends Placed> T placed(T element, String name, int x, int y, int width, int height) {
		element.setId(name);
		element.setName(name);
		element.setX(mm(x));
		element.setY(mm(y));
		element.setWidth(mm(width));
		element.setHeight(mm(height));
		return element;
	}

	private static Length mm(long millimetres) {
		return Length.ofMillimetres(millimetres);
	}
}
