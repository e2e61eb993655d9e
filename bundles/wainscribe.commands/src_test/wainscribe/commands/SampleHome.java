// SPDX-License-Identifier: EPL-2.0
package wainscribe.commands;

import wainscribe.model.Box;
import wainscribe.model.BoxType;
import wainscribe.model.Brief;
import wainscribe.model.ExistingTrim;
import wainscribe.model.Fixture;
import wainscribe.model.FixtureType;
import wainscribe.model.Guide;
import wainscribe.model.Home;
import wainscribe.model.Opening;
import wainscribe.model.OpeningKind;
import wainscribe.model.PlacedFrame;
import wainscribe.model.Room;
import wainscribe.model.Wall;
import wainscribe.model.WainscribeFactory;
import wainscribe.model.length.Length;
import wainscribe.model.length.LengthUnit;

/** A small home made up for tests: one room of two walls. */
final class SampleHome {

	private static final WainscribeFactory MAKE = WainscribeFactory.eINSTANCE;

	final Home home = MAKE.createHome();
	final Room room = MAKE.createRoom();
	final Wall wall = wall("A");
	final Wall other = wall("B");
	final Opening window = MAKE.createOpening();
	final Fixture fireplace = MAKE.createFixture();
	final Box outlet = box("outlet 1");
	final Box lightSwitch = box("switch 1");
	final Guide guide = MAKE.createGuide();
	final ExistingTrim base = MAKE.createExistingTrim();

	SampleHome() {
		home.setUnits(LengthUnit.INCH);
		room.setName("Reading room");
		room.setHeight(Length.ofInches(96));
		room.getWalls().add(wall);
		room.getWalls().add(other);
		window.setName("window 1");
		window.setKind(OpeningKind.WINDOW);
		place(window, 40, 30, 36, 48);
		wall.getOpenings().add(window);
		fireplace.setName("fireplace");
		fireplace.setType(FixtureType.FIREPLACE);
		place(fireplace, 90, 0, 48, 42);
		fireplace.setOpeningX(Length.ofInches(98));
		wall.getFixtures().add(fireplace);
		outlet.setType(BoxType.RECEPTACLE);
		lightSwitch.setType(BoxType.SWITCH);
		lightSwitch.setGang(1);
		wall.getBoxes().add(outlet);
		wall.getBoxes().add(lightSwitch);
		guide.setAt(Length.ofInches(60));
		wall.getGuides().add(guide);
		base.setName("base");
		place(base, 0, 0, 30, 4);
		wall.getTrims().add(base);
	}

	/** Gives the room a brief of its own. */
	Brief ownBrief() {
		Brief brief = MAKE.createBrief();
		brief.setId("brief");
		brief.setPattern("frames-to-ceiling");
		room.setBrief(brief);
		return brief;
	}

	/** Places a frame by hand. */
	PlacedFrame placed(int x) {
		PlacedFrame frame = MAKE.createPlacedFrame();
		frame.setId("frame-" + x);
		place(frame, x, 9, 16, 20);
		wall.getPlacedFrames().add(frame);
		return frame;
	}

	private static Wall wall(String name) {
		Wall wall = MAKE.createWall();
		wall.setId("wall-" + name);
		wall.setName(name);
		wall.setLength(Length.ofInches(144));
		return wall;
	}

	static Box box(String name) {
		Box box = MAKE.createBox();
		box.setName(name);
		place(box, 12, 14, 3, 5);
		return box;
	}

	private static void place(wainscribe.model.Placed element, int x, int y, int width, int height) {
		element.setX(Length.ofInches(x));
		element.setY(Length.ofInches(y));
		element.setWidth(Length.ofInches(width));
		element.setHeight(Length.ofInches(height));
	}
}
