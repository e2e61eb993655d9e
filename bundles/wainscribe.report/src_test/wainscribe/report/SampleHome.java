// SPDX-License-Identifier: EPL-2.0
package wainscribe.report;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;

import wainscribe.model.Box;
import wainscribe.model.BoxType;
import wainscribe.model.Brief;
import wainscribe.model.Fixture;
import wainscribe.model.FixtureType;
import wainscribe.model.Home;
import wainscribe.model.Opening;
import wainscribe.model.OpeningKind;
import wainscribe.model.Paint;
import wainscribe.model.Placed;
import wainscribe.model.Price;
import wainscribe.model.PriceUnit;
import wainscribe.model.Room;
import wainscribe.model.Surface;
import wainscribe.model.SurfaceZone;
import wainscribe.model.WainscribeFactory;
import wainscribe.model.Wall;
import wainscribe.model.length.Length;
import wainscribe.model.length.LengthUnit;

/** A home of square rooms of 4 x 3 m for tests; names are free. */
public final class SampleHome {

	private static final WainscribeFactory MODEL = WainscribeFactory.eINSTANCE;

	private final Home home = MODEL.createHome();
	private final List<Room> rooms = new ArrayList<>();

	/** Creates a home. */
	public SampleHome(String name, LengthUnit unit) {
		home.setId("home");
		home.setName(name);
		home.setUnits(unit);
		home.setBuilt(1911);
		home.setCurrency("EUR");
		Price price = MODEL.createPrice();
		price.setId("price");
		price.setItem("caulk");
		price.setUnit(PriceUnit.EACH);
		price.setAmount(new BigDecimal("4.50"));
		home.getPrices().add(price);
	}

	/** Adds a room with a door, a window, a mirror and an outlet. */
	public SampleHome room(String name) {
		Room room = MODEL.createRoom();
		String id = "room" + rooms.size();
		room.setId(id);
		room.setName(name);
		room.setHeight(mm(2600));
		Brief brief = MODEL.createBrief();
		brief.setId(id + "-brief");
		brief.setPattern("frames-under-rail");
		brief.setRail(mm(900));
		room.setBrief(brief);
		String[] names = { "A", "a", "../B", "CON" };
		for (int i = 0; i < names.length; i++) {
			Wall wall = MODEL.createWall();
			wall.setId(id + "-wall" + i);
			wall.setName(names[i]);
			wall.setLength(mm(i % 2 == 0 ? 4000 : 3000));
			room.getWalls().add(wall);
		}
		furnish(room, id);
		rooms.add(room);
		return this;
	}

	private static void furnish(Room room, String id) {
		Opening door = place(MODEL.createOpening(), id + "-door", 500, 0, 800, 2000);
		door.setKind(OpeningKind.DOOR);
		door.setCasing(mm(70));
		door.setName("<img src=x onerror=alert(1)>");
		room.getWalls().get(0).getOpenings().add(door);
		Opening window = place(MODEL.createOpening(), id + "-window", 1000, 1000, 900, 1200);
		window.setKind(OpeningKind.WINDOW);
		window.setCasing(mm(70));
		room.getWalls().get(1).getOpenings().add(window);
		Fixture mirror = place(MODEL.createFixture(), id + "-mirror", 1500, 1200, 600, 800);
		mirror.setType(FixtureType.MIRROR);
		room.getWalls().get(2).getFixtures().add(mirror);
		Box box = place(MODEL.createBox(), id + "-box", 2500, 400, 86, 86);
		box.setType(BoxType.RECEPTACLE);
		room.getWalls().get(2).getBoxes().add(box);
		Paint paint = MODEL.createPaint();
		paint.setId(id + "-paint");
		paint.setName("Fern & <moss>");
		paint.setColour("#6f8077");
		SurfaceZone zone = MODEL.createSurfaceZone();
		zone.setSurface(Surface.TRIM);
		paint.setZone(zone);
		room.getPaints().add(paint);
	}

	private static <T extends Placed> T place(T placed, String id, long x, long y, long width, long height) {
		placed.setId(id);
		placed.setX(mm(x));
		placed.setY(mm(y));
		placed.setWidth(mm(width));
		placed.setHeight(mm(height));
		return placed;
	}

	private static Length mm(long millimetres) {
		return Length.ofMillimetres(millimetres);
	}

	/** Returns the home. */
	public Home home() {
		return home;
	}

	/** Returns the rooms. */
	public List<Room> rooms() {
		return rooms;
	}

	/** Works out the content of a pack. */
	public PackContent content(DesignServices services) {
		return new PackContents(services).of(home, rooms, PackProgress.NONE);
	}
}
