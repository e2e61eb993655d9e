// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.elevation.tests;

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
import wainscribe.model.ExistingTrim;
import wainscribe.model.Fixture;
import wainscribe.model.FixtureType;
import wainscribe.model.Home;
import wainscribe.model.Opening;
import wainscribe.model.OpeningKind;
import wainscribe.model.Placed;
import wainscribe.model.Room;
import wainscribe.model.Service;
import wainscribe.model.ServiceKind;
import wainscribe.model.TrimType;
import wainscribe.model.Wall;
import wainscribe.model.WainscribeFactory;
import wainscribe.model.length.Length;
import wainscribe.model.length.LengthUnit;
import wainscribe.model.storage.HomeFolder;

/** A home made up for tests, in a project of the workspace: one room of four walls, with a window, a door and outlets. */
final class Schoolroom {

	private static final WainscribeFactory MAKE = WainscribeFactory.eINSTANCE;

	private final IProject project;

	private Schoolroom(IProject project) {
		this.project = project;
	}

	/** Makes the home in a new project. */
	static Schoolroom create(String name) throws CoreException, IOException {
		return create(name, room());
	}

	/** Makes the home in a new project, with a hall whose first wall follows a stair and has a stud, a pipe and old trim. */
	static Schoolroom withStairs(String name) throws CoreException, IOException {
		return create(name, stairHall());
	}

	private static Schoolroom create(String name, Room room) throws CoreException, IOException {
		IProject project = ResourcesPlugin.getWorkspace().getRoot().getProject(name);
		project.create(null);
		project.open(null);
		Home home = MAKE.createHome();
		home.setId("home");
		home.setName("Schoolhouse for tests");
		home.setUnits(LengthUnit.INCH);
		home.setCountry("US");
		Brief brief = MAKE.createBrief();
		brief.setId("home-brief");
		brief.setPattern("frames-under-rail");
		brief.setRail(in(36));
		home.setBrief(brief);
		HomeFolder folder = HomeFolder.create(project.getLocation().toPath(), home);
		folder.add(room);
		folder.save();
		project.refreshLocal(IResource.DEPTH_INFINITE, null);
		return new Schoolroom(project);
	}

	/** Returns the room's file. */
	IFile file() throws CoreException {
		for (IResource member : project.getFolder(HomeFolder.ROOMS_FOLDER).members()) {
			if (HomeFolder.ROOM_EXTENSION.equals(member.getFileExtension())) {
				return (IFile) member;
			}
		}
		throw new IllegalStateException("no room in " + project.getName());
	}

	/** Removes the project and its files. */
	void delete() throws CoreException {
		project.delete(true, true, null);
	}

	private static Room room() {
		Room room = MAKE.createRoom();
		room.setId("room");
		room.setName("Map room");
		room.setHeight(in(96));
		Wall north = wall("north", 144);
		Wall east = wall("east", 108);
		Wall south = wall("south", 144);
		Wall west = wall("west", 108);
		room.getWalls().addAll(List.of(north, east, south, west));
		north.getBoxes().add(box("outlet 1", 20));
		south.getBoxes().add(box("outlet 2", 70));
		east.getOpenings().add(opening("north light", OpeningKind.WINDOW, 36, 40, 36, 40));
		west.getOpenings().add(opening("hall door", OpeningKind.DOOR, 60, 0, 32, 80));
		Fixture map = MAKE.createFixture();
		map.setType(FixtureType.ART);
		map.setName("map");
		south.getFixtures().add(placed(map, 50, 52, 40, 30));
		return room;
	}

	private static Room stairHall() {
		Room hall = MAKE.createRoom();
		hall.setId("room");
		hall.setName("Stair hall");
		hall.setHeight(in(96));
		Wall stair = wall("stair", 144);
		stair.setFloorRight(in(72));
		Wall level = wall("level", 144);
		hall.getWalls().addAll(List.of(stair, level));
		Service stud = MAKE.createService();
		stud.setKind(ServiceKind.STUD);
		stud.setId("stud");
		stud.setX(in(48));
		stud.setWidth(in(2));
		Service pipe = MAKE.createService();
		pipe.setKind(ServiceKind.PIPE);
		pipe.setName("pipe");
		level.getServices().addAll(List.of(stud, placed(pipe, 100, 50, 8, 40)));
		ExistingTrim picture = MAKE.createExistingTrim();
		picture.setType(TrimType.PICTURE_RAIL);
		picture.setId("picture rail");
		picture.setY(in(80));
		picture.setHeight(in(6));
		level.getTrims().add(picture);
		level.getOpenings().add(opening("light", OpeningKind.WINDOW, 60, 45, 24, 30));
		Fixture hook = MAKE.createFixture();
		hook.setType(FixtureType.ART);
		hook.setName("slate");
		level.getFixtures().add(placed(hook, 10, 50, 30, 20));
		level.getBoxes().add(box("outlet 1", 20));
		return hall;
	}

	private static Wall wall(String name, int length) {
		Wall wall = MAKE.createWall();
		wall.setId("wall-" + name);
		wall.setName(name);
		wall.setLength(in(length));
		return wall;
	}

	private static Box box(String name, int x) {
		Box box = MAKE.createBox();
		box.setType(BoxType.RECEPTACLE);
		box.setName(name);
		return placed(box, x, 16, 3, 5);
	}

	private static Opening opening(String name, OpeningKind kind, int x, int y, int width, int height) {
		Opening opening = MAKE.createOpening();
		opening.setKind(kind);
		opening.setName(name);
		opening.setCasing(in(3));
		opening.setCasingDepth(in(1));
		return placed(opening, x, y, width, height);
	}

	private static <T extends Placed> T placed(T element, int x, int y, int width, int height) {
		element.setId("id " + element.getName());
		element.setX(in(x));
		element.setY(in(y));
		element.setWidth(in(width));
		element.setHeight(in(height));
		return element;
	}

	private static Length in(long inches) {
		return Length.ofInches(inches);
	}
}
