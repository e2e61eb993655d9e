// SPDX-License-Identifier: EPL-2.0
package wainscribe.takeoff;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static wainscribe.takeoff.SampleRoom.mm;

import java.math.BigDecimal;
import java.util.List;

import org.junit.jupiter.api.Test;

import wainscribe.layout.PatternRoomDesigner;
import wainscribe.layout.RoomDesign;
import wainscribe.layout.StripOutline;
import wainscribe.layout.pattern.BuiltInPatterns;
import wainscribe.model.Home;
import wainscribe.model.Room;
import wainscribe.model.Wall;
import wainscribe.model.WainscribeFactory;
import wainscribe.model.length.LengthUnit;
import wainscribe.profile.BuiltInProfiles;
import wainscribe.profile.ProfileCatalogue;

/** Strips are bought, glued and nailed like frames. */
class StripTakeoffTest {

	private final ProfileCatalogue profiles = BuiltInProfiles.catalogue();

	@Test
	void battensAreCountedByTheirLength() {
		RoomDesign design = design();
		List<StripOutline> strips = design.layout().strips().toList();
		assertEquals(5, strips.size(), "derived: (2840 - 5 x 64) / 6 = 420");
		List<TakeoffLine> lines = new Takeoffs(profiles).of(design.home(), List.of(design)).lines();
		TakeoffLine moulding = lines.stream().filter(line -> line.key().startsWith("strip ")).findFirst().orElseThrow();
		assertTrue(moulding.formula().contains("5 pieces") && moulding.formula().contains("3.50 m"), moulding.formula());
		TakeoffLine adhesive = lines.stream().filter(line -> line.key().equals(QuantityKey.ADHESIVE)).findFirst().orElseThrow();
		assertTrue(adhesive.formula().startsWith("(frames and strips 3.50 m + rail "), adhesive.formula());
		assertTrue(lines.stream().anyMatch(line -> line.key().equals(QuantityKey.BRADS) && line.quantity().compareTo(BigDecimal.TEN) > 0));
	}

	private RoomDesign design() {
		WainscribeFactory factory = WainscribeFactory.eINSTANCE;
		Home home = factory.createHome();
		home.setUnits(LengthUnit.MILLIMETRE);
		Room room = factory.createRoom();
		room.setName("Hall");
		room.setHeight(mm(2400));
		room.setOpen(Boolean.TRUE);
		Wall wall = factory.createWall();
		wall.setName("A");
		wall.setLength(mm(2840));
		room.getWalls().add(wall);
		room.setBrief(factory.createBrief());
		room.getBrief().setPattern("battens-under-rail");
		room.getBrief().setRail(mm(900));
		return new PatternRoomDesigner(BuiltInPatterns.catalogue(), profiles).design(home, room);
	}
}
