// SPDX-License-Identifier: EPL-2.0
package wainscribe.drawing;

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
import wainscribe.model.Box;
import wainscribe.model.BoxType;
import wainscribe.model.Fixture;
import wainscribe.model.FixtureType;
import wainscribe.model.Home;
import wainscribe.model.Material;
import wainscribe.model.Opening;
import wainscribe.model.OpeningKind;
import wainscribe.model.Placed;
import wainscribe.model.Room;
import wainscribe.model.WainscribeFactory;
import wainscribe.model.Wall;
import wainscribe.model.length.Length;
import wainscribe.model.length.LengthUnit;

/** A room with one wall for tests: things are put on it one by one. */
public final class SampleRoom {

	private static final WainscribeFactory MODEL = WainscribeFactory.eINSTANCE;

	private final Home home = MODEL.createHome();
	private final Room room = MODEL.createRoom();
	private final Wall wall = MODEL.createWall();
	private final List<FrameOutline> frames = new ArrayList<>();
	private Length railTop = mm(900);

	/** Creates a wall of some millimetres. */
	public SampleRoom(LengthUnit unit, long length, long height) {
		home.setId("home");
		home.setName("Old schoolhouse");
		home.setUnits(unit);
		room.setId("room");
		room.setName("Reading room");
		room.setHeight(mm(height));
		wall.setId("wall");
		wall.setName("A");
		wall.setLength(mm(length));
		room.getWalls().add(wall);
	}

	/** Returns whole millimetres. */
	public static Length mm(long millimetres) {
		return Length.ofMillimetres(millimetres);
	}

	/** Adds a door or window with 70 mm of casing. */
	public Opening opening(OpeningKind kind, long x, long y, long width, long height) {
		Opening opening = place(MODEL.createOpening(), "opening-" + wall.getOpenings().size(), x, y, width, height);
		opening.setKind(kind);
		opening.setCasing(mm(70));
		wall.getOpenings().add(opening);
		return opening;
	}

	/** Adds a fixture. */
	public Fixture fixture(FixtureType type, long x, long y, long width, long height) {
		Fixture fixture = place(MODEL.createFixture(), "fixture-" + wall.getFixtures().size(), x, y, width, height);
		fixture.setType(type);
		wall.getFixtures().add(fixture);
		return fixture;
	}

	/** Adds a plate. */
	public Box box(BoxType type, long x, long y, long width, long height) {
		Box box = place(MODEL.createBox(), "box-" + wall.getBoxes().size(), x, y, width, height);
		box.setType(type);
		wall.getBoxes().add(box);
		return box;
	}

	/** Adds a frame. */
	public SampleRoom frame(long x, long y, long width, long height) {
		frames.add(new FrameOutline("A" + (frames.size() + 1), Tier.LOWER, FrameRole.RUN, mm(x), mm(y), mm(width), mm(height),
				Length.ZERO, Length.ZERO));
		return this;
	}

	/** Sets the top of the rail. */
	public SampleRoom rail(long top) {
		railTop = mm(top);
		return this;
	}

	private static <T extends Placed> T place(T placed, String id, long x, long y, long width, long height) {
		placed.setId(id);
		placed.setX(mm(x));
		placed.setY(mm(y));
		placed.setWidth(mm(width));
		placed.setHeight(mm(height));
		return placed;
	}

	/** Returns the home. */
	public Home home() {
		return home;
	}

	/** Returns the room. */
	public Room room() {
		return room;
	}

	/** Returns the wall. */
	public Wall wall() {
		return wall;
	}

	/** Returns the design with what was put on the wall. */
	public RoomDesign design() {
		MouldingSection moulding = new MouldingSection("", mm(35), mm(15));
		MouldingSection rail = new MouldingSection("", mm(60), mm(20));
		EffectiveBrief brief = new EffectiveBrief(home.getUnits(), "frames-under-rail", railTop, rail, null, null, moulding,
				null, null, mm(120), Length.ZERO, Material.MDF, List.of(), null, Length.ZERO, Set.of(), Map.of());
		RunLayout run = new RunLayout(Tier.LOWER, Length.ZERO, wall.getLength(), mm(120), railTop.minus(rail.face()), frames, "");
		RoomLayout layout = new RoomLayout(room, "frames-under-rail", Material.MDF, mm(80), mm(80),
				new RailBand(railTop.minus(rail.face()), railTop, rail.thickness()), moulding,
				List.of(new WallLayout(wall, List.of(run))),
				new Objective(0, 0, 0, 0, 0, 0, BigDecimal.ZERO, frames.size(), Length.ZERO), true, List.of(), List.of());
		return new RoomDesign(home, room, brief, layout);
	}
}
