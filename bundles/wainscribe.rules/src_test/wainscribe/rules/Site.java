// SPDX-License-Identifier: EPL-2.0
package wainscribe.rules;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
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
import wainscribe.model.ExistingTrim;
import wainscribe.model.Finish;
import wainscribe.model.Fixture;
import wainscribe.model.FixtureType;
import wainscribe.model.GlossLevel;
import wainscribe.model.Home;
import wainscribe.model.Material;
import wainscribe.model.Opening;
import wainscribe.model.OpeningKind;
import wainscribe.model.Paint;
import wainscribe.model.Placed;
import wainscribe.model.Room;
import wainscribe.model.Surface;
import wainscribe.model.SurfaceZone;
import wainscribe.model.TrimType;
import wainscribe.model.WainscribeFactory;
import wainscribe.model.Wall;
import wainscribe.model.length.Length;
import wainscribe.model.length.LengthUnit;

/**
 * A room with a layout made by hand, so that distances which the solver would never choose can be put before the checks.
 * Begins as a reading room of four walls A to D, 4000 by 3000 mm and 2700 mm high, with a pine rail at 840 to 900 mm and no
 * frames. Numbers are millimetres.
 */
final class Site {

	static final RuleEngine ENGINE = engine();

	final Home home = WainscribeFactory.eINSTANCE.createHome();
	final Room room = WainscribeFactory.eINSTANCE.createRoom();
	final Map<Wall, List<FrameOutline>> frames = new LinkedHashMap<>();
	final List<Length> stock = new ArrayList<>();
	final Set<String> boardWalls = new HashSet<>();
	RailBand rail = new RailBand(mm(840), mm(900), mm(20));
	MouldingSection profile = new MouldingSection("", mm(32), mm(16));
	Material material = Material.PINE;
	Length gap = mm(80);
	Length gapY = mm(80);
	Length widthMin;
	Length widthMax;
	Length nail;
	Length board = Length.ZERO;
	private int ids;

	Site() {
		home.setUnits(LengthUnit.MILLIMETRE);
		home.setCountry("US");
		home.setBuilt(1990);
		room.setName("Reading room");
		room.setId("room");
		room.setHeight(mm(2700));
		wall("A", 4000);
		wall("B", 3000);
		wall("C", 4000);
		wall("D", 3000);
	}

	static Length mm(double millimetres) {
		return Length.ofMillimetres(BigDecimal.valueOf(millimetres));
	}

	static Length in(long numerator, long denominator) {
		return Length.ofInches(numerator, denominator);
	}

	Wall wall(String name, double length) {
		Wall wall = WainscribeFactory.eINSTANCE.createWall();
		wall.setName(name);
		wall.setId("wall-" + name);
		wall.setLength(mm(length));
		room.getWalls().add(wall);
		return wall;
	}

	Wall wall(String name) {
		return room.getWalls().stream().filter(wall -> wall.getName().equals(name)).findFirst().orElseThrow();
	}

	Opening opening(String wall, OpeningKind kind, String name, double x, double y, double width, double height) {
		Opening opening = WainscribeFactory.eINSTANCE.createOpening();
		opening.setKind(kind);
		opening.setCasing(mm(60));
		opening.setCasingDepth(mm(20));
		place(opening, name, x, y, width, height);
		wall(wall).getOpenings().add(opening);
		return opening;
	}

	Fixture fixture(String wall, FixtureType type, String name, double x, double y, double width, double height) {
		Fixture fixture = WainscribeFactory.eINSTANCE.createFixture();
		fixture.setType(type);
		place(fixture, name, x, y, width, height);
		wall(wall).getFixtures().add(fixture);
		return fixture;
	}

	Box box(String wall, BoxType type, String name, double x, double y) {
		Box box = WainscribeFactory.eINSTANCE.createBox();
		box.setType(type);
		place(box, name, x, y, 70, 114);
		wall(wall).getBoxes().add(box);
		return box;
	}

	ExistingTrim trim(String wall, TrimType type, String name, double y, double face, double thickness) {
		ExistingTrim trim = WainscribeFactory.eINSTANCE.createExistingTrim();
		trim.setType(type);
		place(trim, name, 0, y, 0, face);
		trim.setWidth(null);
		trim.setDepth(mm(thickness));
		wall(wall).getTrims().add(trim);
		return trim;
	}

	Paint paint(Surface surface, String name, GlossLevel gloss) {
		Paint paint = WainscribeFactory.eINSTANCE.createPaint();
		paint.setName(name);
		paint.setId("id-" + ids++);
		paint.setZone(zone(surface));
		paint.setGloss(gloss);
		room.getPaints().add(paint);
		return paint;
	}

	Finish finish(Surface surface, String name, GlossLevel gloss) {
		Finish finish = WainscribeFactory.eINSTANCE.createFinish();
		finish.setName(name);
		finish.setId("id-" + ids++);
		finish.setZone(zone(surface));
		finish.setGloss(gloss);
		room.getFinishes().add(finish);
		return finish;
	}

	/** Adds a frame of the lower tier that was placed by hand. */
	void frame(String wall, String id, double x, double y, double width, double height) {
		frame(wall, id, Tier.LOWER, FrameRole.PLACED, x, y, width, height);
	}

	void frame(String wall, String id, Tier tier, FrameRole role, double x, double y, double width, double height) {
		frame(wall, new FrameOutline(id, tier, role, mm(x), mm(y), mm(width), mm(height), Length.ZERO, Length.ZERO));
	}

	void frame(String wall, FrameOutline frame) {
		frames.computeIfAbsent(wall(wall), key -> new ArrayList<>()).add(frame);
	}

	RoomDesign design() {
		EffectiveBrief brief = new EffectiveBrief(home.getUnits(), "frames-under-rail", rail == null ? mm(900) : rail.top(),
				new MouldingSection("", mm(60), rail == null ? mm(20) : rail.thickness()), null, null, profile, widthMin,
				widthMax, mm(140), Length.ZERO, material, stock, nail, board, boardWalls, Map.of());
		List<WallLayout> walls = room.getWalls().stream().map(this::layout).toList();
		Objective objective = new Objective(0, 0, 0, 0, 0, 0, BigDecimal.ZERO, 0, Length.ZERO);
		return new RoomDesign(home, room, brief, new RoomLayout(room, brief.pattern(), material, gap, gapY, rail, profile,
				walls, objective, false, List.of(), List.of()));
	}

	List<Finding> findings(String rule) {
		List<Finding> found = ENGINE.only(candidate -> candidate.id().equals(rule)).check(design());
		return found.stream().filter(finding -> finding.rule().equals(rule)).toList();
	}

	private WallLayout layout(Wall wall) {
		List<FrameOutline> on = frames.getOrDefault(wall, List.of());
		return new WallLayout(wall, on.isEmpty() ? List.of()
				: List.of(new RunLayout(Tier.LOWER, Length.ZERO, wall.getLength(), mm(140), mm(840), on, "")));
	}

	private void place(Placed placed, String name, double x, double y, double width, double height) {
		placed.setName(name);
		placed.setId("id-" + ids++);
		placed.setX(mm(x));
		placed.setY(mm(y));
		placed.setWidth(mm(width));
		placed.setHeight(mm(height));
	}

	private static SurfaceZone zone(Surface surface) {
		SurfaceZone zone = WainscribeFactory.eINSTANCE.createSurfaceZone();
		zone.setSurface(surface);
		return zone;
	}

	private static RuleEngine engine() {
		try {
			return new RuleEngine(RuleCatalogue.of(Path.of(""), Site.class.getClassLoader()));
		} catch (IOException failure) {
			throw new UncheckedIOException(failure);
		}
	}
}
