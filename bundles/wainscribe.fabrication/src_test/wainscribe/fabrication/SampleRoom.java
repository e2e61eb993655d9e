// SPDX-License-Identifier: EPL-2.0
package wainscribe.fabrication;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;

import wainscribe.layout.EffectiveBrief;
import wainscribe.layout.FrameOutline;
import wainscribe.layout.FrameRole;
import wainscribe.layout.MouldingSection;
import wainscribe.layout.Objective;
import wainscribe.layout.RailBand;
import wainscribe.layout.RoomDesign;
import wainscribe.layout.RoomLayout;
import wainscribe.layout.RunLayout;
import wainscribe.layout.Tier;
import wainscribe.layout.WallLayout;
import wainscribe.model.Brief;
import wainscribe.model.ExistingTrim;
import wainscribe.model.Home;
import wainscribe.model.Material;
import wainscribe.model.Opening;
import wainscribe.model.OpeningKind;
import wainscribe.model.ProfileUse;
import wainscribe.model.Room;
import wainscribe.model.Service;
import wainscribe.model.ServiceKind;
import wainscribe.model.TrimType;
import wainscribe.model.WainscribeFactory;
import wainscribe.model.Wall;
import wainscribe.model.length.Length;
import wainscribe.model.length.LengthUnit;

/** A room for tests, put together by hand: walls in millimetres, a layout of given frames and a rail. */
final class SampleRoom {

	final Home home = WainscribeFactory.eINSTANCE.createHome();
	final Room room = WainscribeFactory.eINSTANCE.createRoom();
	private final List<WallLayout> layouts = new ArrayList<>();
	RailBand rail;
	MouldingSection frame = new MouldingSection("ogee-32", mm(32), mm(13));
	MouldingSection railSection = new MouldingSection("", mm(60), mm(20));
	Length base = Length.ZERO;
	Length crown = Length.ZERO;
	Material material = Material.MDF;
	List<Length> stock = List.of();
	Map<ProfileUse, String> profiles = Map.of();

	SampleRoom(int height) {
		home.setUnits(LengthUnit.MILLIMETRE);
		room.setName("Reading room");
		room.setHeight(mm(height));
	}

	static Length mm(long millimetres) {
		return Length.ofMillimetres(millimetres);
	}

	Wall wall(String name, int length, String angle, FrameOutline... frames) {
		Wall wall = WainscribeFactory.eINSTANCE.createWall();
		wall.setName(name);
		wall.setLength(mm(length));
		wall.setAngle(new BigDecimal(angle));
		room.getWalls().add(wall);
		layouts.add(new WallLayout(wall, frames.length == 0 ? List.of()
				: List.of(new RunLayout(Tier.LOWER, mm(0), mm(length), mm(0), mm(900), List.of(frames), ""))));
		return wall;
	}

	static FrameOutline frame(String id, int x, int y, int width, int height, int rise) {
		return new FrameOutline(id, Tier.LOWER, FrameRole.RUN, mm(x), mm(y), mm(width), mm(height), mm(rise), mm(rise));
	}

	static Opening door(Wall wall, int x, int width, int height, int casing) {
		Opening door = WainscribeFactory.eINSTANCE.createOpening();
		door.setKind(OpeningKind.DOOR);
		door.setX(mm(x));
		door.setY(mm(0));
		door.setWidth(mm(width));
		door.setHeight(mm(height));
		door.setCasing(mm(casing));
		wall.getOpenings().add(door);
		return door;
	}

	static ExistingTrim trim(Wall wall, TrimType type, boolean keep) {
		ExistingTrim trim = WainscribeFactory.eINSTANCE.createExistingTrim();
		trim.setType(type);
		trim.setKeep(keep);
		trim.setName("Old " + type.getLiteral());
		wall.getTrims().add(trim);
		return trim;
	}

	static void stud(Wall wall, int x) {
		Service stud = WainscribeFactory.eINSTANCE.createService();
		stud.setKind(ServiceKind.STUD);
		stud.setX(mm(x));
		wall.getServices().add(stud);
	}

	/** Returns the room's own brief, made on the first call. */
	Brief brief() {
		if (room.getBrief() == null) {
			room.setBrief(WainscribeFactory.eINSTANCE.createBrief());
		}
		return room.getBrief();
	}

	RoomDesign design() {
		EffectiveBrief brief = new EffectiveBrief(LengthUnit.MILLIMETRE, "frames-under-rail", mm(900), railSection, null, null,
				frame, null, null, base, crown, material, stock, null, Length.ZERO, Set.of(), profiles);
		Objective objective = new Objective(0, 0, 0, 0, 0, 0, BigDecimal.ZERO, 0, Length.ZERO);
		RoomLayout layout = new RoomLayout(room, "frames-under-rail", material, mm(80), mm(80), rail, frame, layouts, objective,
				false, List.of(), List.of());
		return new RoomDesign(home, room, brief, layout);
	}
}
