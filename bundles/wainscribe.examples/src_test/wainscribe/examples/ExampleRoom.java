// SPDX-License-Identifier: EPL-2.0
package wainscribe.examples;

import java.util.List;

import wainscribe.examples.pattern.FramesOverRail;
import wainscribe.examples.profile.ReededProfiles;
import wainscribe.layout.PatternRoomDesigner;
import wainscribe.layout.RoomDesign;
import wainscribe.layout.pattern.PatternCatalogue;
import wainscribe.layout.pattern.PatternDescriptor;
import wainscribe.layout.pattern.WallPattern;
import wainscribe.model.Brief;
import wainscribe.model.Fixture;
import wainscribe.model.FixtureType;
import wainscribe.model.Home;
import wainscribe.model.ProfileReference;
import wainscribe.model.ProfileUse;
import wainscribe.model.Room;
import wainscribe.model.WainscribeFactory;
import wainscribe.model.Wall;
import wainscribe.model.length.Length;
import wainscribe.model.length.LengthUnit;
import wainscribe.profile.ProfileCatalogue;

/** A room of two walls that uses the example pattern and the example profile. */
final class ExampleRoom {

	final Home home = WainscribeFactory.eINSTANCE.createHome();
	final Room room = WainscribeFactory.eINSTANCE.createRoom();

	ExampleRoom() {
		home.setUnits(LengthUnit.MILLIMETRE);
		room.setName("Hall");
		room.setId("room");
		room.setOpen(true);
		room.setHeight(Length.ofMillimetres(2700));
		wall("A", 3000);
		wall("B", 4000);
		Brief brief = WainscribeFactory.eINSTANCE.createBrief();
		brief.setPattern("frames-over-rail");
		brief.setRail(Length.ofMillimetres(900));
		ProfileReference reeds = WainscribeFactory.eINSTANCE.createProfileReference();
		reeds.setUse(ProfileUse.FRAME);
		reeds.setProfile("example-reeds-36");
		brief.getProfiles().add(reeds);
		room.setBrief(brief);
	}

	private void wall(String name, long length) {
		Wall wall = WainscribeFactory.eINSTANCE.createWall();
		wall.setName(name);
		wall.setId("wall-" + name);
		wall.setLength(Length.ofMillimetres(length));
		room.getWalls().add(wall);
	}

	Fixture art(long x, long y) {
		Fixture art = WainscribeFactory.eINSTANCE.createFixture();
		art.setType(FixtureType.ART);
		art.setName("Map");
		art.setId("map");
		art.setX(Length.ofMillimetres(x));
		art.setY(Length.ofMillimetres(y));
		art.setWidth(Length.ofMillimetres(300));
		art.setHeight(Length.ofMillimetres(300));
		room.getWalls().getFirst().getFixtures().add(art);
		return art;
	}

	RoomDesign design() {
		return new PatternRoomDesigner(new PatternCatalogue(List.of(new OverRail())),
				new ProfileCatalogue(new ReededProfiles().profiles())).design(home, room);
	}

	private record OverRail() implements PatternDescriptor {

		@Override
		public String id() {
			return "frames-over-rail";
		}

		@Override
		public String name() {
			return "Frames over a rail";
		}

		@Override
		public String description() {
			return "";
		}

		@Override
		public WallPattern pattern() {
			return new FramesOverRail();
		}
	}
}
