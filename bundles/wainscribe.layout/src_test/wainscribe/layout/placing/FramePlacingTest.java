// SPDX-License-Identifier: EPL-2.0
package wainscribe.layout.placing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

import wainscribe.model.Box;
import wainscribe.model.BoxType;
import wainscribe.model.Opening;
import wainscribe.model.OpeningKind;
import wainscribe.model.Placed;
import wainscribe.model.Room;
import wainscribe.model.WainscribeFactory;
import wainscribe.model.Wall;
import wainscribe.model.length.Length;
import wainscribe.model.length.LengthUnit;
import wainscribe.model.outline.Outline;

/** Frames carried over keep their places from the end or from the middle, and are told plainly what bars them. */
class FramePlacingTest {

	private final Room room = WainscribeFactory.eINSTANCE.createRoom();
	private final Wall from = wall("A", 3000);
	private final Wall to = wall("B", 3600);
	private final List<Outline> frames = List.of(outline(100, 200, 1000, 600), outline(1200, 200, 1000, 600));

	@BeforeEach
	void build() {
		room.setHeight(mm(2400));
		room.getWalls().addAll(List.of(from, to));
	}

	@Test
	void fromTheLeftEndTheyStandAsTheyStood() {
		FramePlacing carried = carry(Start.LEFT_END);
		assertTrue(carried.fits(), carried.refusal());
		assertEquals(frames, carried.places());
	}

	@Test
	void fromTheMiddleTheyStandAsFarFromTheMiddle() {
		assertEquals(List.of(outline(400, 200, 1000, 600), outline(1500, 200, 1000, 600)), carry(Start.MIDDLE).places());
	}

	@Test
	void aWallTooShortIsSaid() {
		to.setLength(mm(2000));
		assertEquals("The frames reach from 100 mm to 2200 mm; wall B is only 2000 mm long.", carry(Start.LEFT_END).refusal());
	}

	@Test
	void aCasingInTheWayIsSaid() {
		Opening door = WainscribeFactory.eINSTANCE.createOpening();
		door.setKind(OpeningKind.DOOR);
		door.setCasing(mm(80));
		to.getOpenings().add(placed(door, "hall door", 2250, 0, 800, 2000));
		assertEquals("A frame would meet hall door on wall B.", carry(Start.LEFT_END).refusal());
	}

	@Test
	void aPlateMayStandInTheFieldAndNotUnderTheMoulding() {
		Box box = WainscribeFactory.eINSTANCE.createBox();
		box.setType(BoxType.RECEPTACLE);
		to.getBoxes().add(placed(box, "outlet", 400, 400, 70, 114));
		assertTrue(carry(Start.LEFT_END).fits());
		box.setX(mm(1080));
		assertFalse(carry(Start.LEFT_END).fits());
	}

	@Test
	void aLowCeilingIsSaid() {
		to.setHeight(mm(700));
		assertEquals("The frames reach up to 800 mm; the ceiling over wall B is at 700 mm.", carry(Start.LEFT_END).refusal());
	}

	private FramePlacing carry(Start start) {
		return FramePlacing.of(frames, from, to, start, mm(30), LengthUnit.MILLIMETRE);
	}

	private static Wall wall(String name, int length) {
		Wall wall = WainscribeFactory.eINSTANCE.createWall();
		wall.setName(name);
		wall.setLength(mm(length));
		return wall;
	}

	private static <T extends Placed> T placed(T thing, String name, int x, int y, int width, int height) {
		thing.setName(name);
		thing.setX(mm(x));
		thing.setY(mm(y));
		thing.setWidth(mm(width));
		thing.setHeight(mm(height));
		return thing;
	}

	private static Outline outline(int x, int y, int width, int height) {
		return Outline.ofSize(mm(x), mm(y), mm(width), mm(height));
	}

	private static Length mm(int millimetres) {
		return Length.ofMillimetres(millimetres);
	}
}
