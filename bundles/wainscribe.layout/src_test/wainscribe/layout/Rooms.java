// SPDX-License-Identifier: EPL-2.0
package wainscribe.layout;

import java.util.function.Consumer;

import wainscribe.layout.pattern.BuiltInPatterns;
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
import wainscribe.model.Wall;
import wainscribe.model.WainscribeFactory;
import wainscribe.model.length.Length;
import wainscribe.model.length.LengthParser;
import wainscribe.model.length.LengthUnit;
import wainscribe.profile.ProfileCatalogue;

/** Builds rooms for tests. Lengths are written as on a survey; bare numbers are in the unit of the home. */
public final class Rooms {

	private static final WainscribeFactory FACTORY = WainscribeFactory.eINSTANCE;

	private final LengthParser parser;
	private final Home home = FACTORY.createHome();
	private final Room room = FACTORY.createRoom();
	private final Brief brief = FACTORY.createBrief();
	private Wall wall;

	private Rooms(LengthUnit unit) {
		parser = new LengthParser(unit);
		home.setUnits(unit);
		room.setBrief(brief);
		room.setName("Test");
	}

	public static Rooms inches() {
		return new Rooms(LengthUnit.INCH);
	}

	public static Rooms millimetres() {
		return new Rooms(LengthUnit.MILLIMETRE);
	}

	public static PatternRoomDesigner designer() {
		return new PatternRoomDesigner(BuiltInPatterns.catalogue(), new ProfileCatalogue(java.util.List.of()));
	}

	public Length length(String text) {
		return parser.parse(text);
	}

	public Rooms height(String height) {
		room.setHeight(length(height));
		return this;
	}

	public Rooms brief(Consumer<Brief> decision) {
		decision.accept(brief);
		return this;
	}

	public Rooms pattern(String pattern) {
		brief.setPattern(pattern);
		return this;
	}

	public Rooms rail(String top) {
		brief.setRail(length(top));
		return this;
	}

	public Rooms gap(String gap) {
		brief.setGap(length(gap));
		return this;
	}

	public Rooms wall(String name, String length) {
		wall = FACTORY.createWall();
		wall.setName(name);
		wall.setLength(length(length));
		room.getWalls().add(wall);
		return this;
	}

	public Rooms shape(Consumer<Wall> change) {
		change.accept(wall);
		return this;
	}

	public Rooms window(String x, String y, String width, String height, String casing) {
		return opening(OpeningKind.WINDOW, x, y, width, height, casing);
	}

	public Rooms door(String x, String width, String height, String casing) {
		return opening(OpeningKind.DOOR, x, "0", width, height, casing);
	}

	private Rooms opening(OpeningKind kind, String x, String y, String width, String height, String casing) {
		Opening opening = FACTORY.createOpening();
		opening.setKind(kind);
		opening.setCasing(length(casing));
		place(opening, x, y, width, height);
		wall.getOpenings().add(opening);
		return this;
	}

	public Rooms outlet(String x, String y, String width, String height) {
		Box box = FACTORY.createBox();
		box.setType(BoxType.RECEPTACLE);
		place(box, x, y, width, height);
		wall.getBoxes().add(box);
		return this;
	}

	public Rooms fixture(FixtureType type, String x, String y, String width, String height, Consumer<Fixture> more) {
		Fixture fixture = FACTORY.createFixture();
		fixture.setType(type);
		place(fixture, x, y, width, height);
		more.accept(fixture);
		wall.getFixtures().add(fixture);
		return this;
	}

	public Rooms fixture(FixtureType type, String x, String y, String width, String height) {
		return fixture(type, x, y, width, height, fixture -> {
		});
	}

	public Rooms placedFrame(String x, String y, String width, String height) {
		wainscribe.model.PlacedFrame frame = FACTORY.createPlacedFrame();
		place(frame, x, y, width, height);
		wall.getPlacedFrames().add(frame);
		return this;
	}

	private void place(Placed placed, String x, String y, String width, String height) {
		placed.setX(length(x));
		placed.setY(length(y));
		placed.setWidth(length(width));
		placed.setHeight(length(height));
	}

	public Home home() {
		return home;
	}

	public Room room() {
		return room;
	}

	public RoomLayout layout() {
		return designer().design(home, room).layout();
	}

	public RoomLayout layoutWithoutAdvice() {
		return designer().withoutAdvice().design(home, room).layout();
	}
}
