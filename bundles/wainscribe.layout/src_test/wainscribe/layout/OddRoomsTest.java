// SPDX-License-Identifier: EPL-2.0
package wainscribe.layout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.LongRange;
import wainscribe.model.Placed;
import wainscribe.model.Wall;
import wainscribe.model.length.Length;

/** Rooms with slopes, missing measures and odd decisions: laid out without a word of complaint but a plain sentence. */
class OddRoomsTest {

	private static Length upTo(Random random, int millimetres) {
		return Length.ofMillimetres(random.nextInt(millimetres + 1));
	}

	private static Rooms odd(long seed) {
		Random random = new Random(seed);
		Rooms rooms = new RandomRoom(random, 3, 3000).next();
		for (Wall wall : rooms.room().getWalls()) {
			if (random.nextInt(2) == 0) {
				wall.setFloorRight(Length.ofMillimetres(random.nextInt(4000) - 2000));
			}
			if (random.nextInt(3) == 0) {
				wall.setHeightRight(upTo(random, 3000));
			}
			if (random.nextInt(5) == 0) {
				wall.setHeight(upTo(random, 3000));
			}
			wall.getBoxes().stream().filter(box -> random.nextInt(6) == 0).forEach(box -> forget(box, random));
			wall.getOpenings().stream().filter(opening -> random.nextInt(6) == 0).forEach(opening -> forget(opening, random));
		}
		if (random.nextInt(4) == 0) {
			rooms.room().setHeight(null);
		}
		if (random.nextInt(4) == 0) {
			rooms.rail(String.valueOf(random.nextInt(3000)) + "mm");
		}
		if (random.nextInt(5) == 0) {
			rooms.gap(String.valueOf(random.nextInt(1500)) + "mm");
		}
		if (random.nextInt(5) == 0) {
			rooms.placedFrame(random.nextInt(2500) + "mm", random.nextInt(2000) + "mm", "450mm", "300mm");
		}
		return rooms;
	}

	private static void forget(Placed placed, Random random) {
		switch (random.nextInt(3)) {
		case 0 -> placed.setX(null);
		case 1 -> placed.setY(null);
		default -> placed.setWidth(null);
		}
	}

	@Property(tries = 500)
	void everyRoomIsLaidOut(@ForAll @LongRange(min = 0, max = 10_000_000) long seed) {
		Rooms rooms = odd(seed);
		RoomLayout layout = rooms.layout();
		assertEquals(rooms.room().getWalls().size(), layout.walls().size());
		assertEquals(layout.objective().frames(), layout.frames().count());
		layout.infeasible().forEach(plain -> assertTrue(plain.reason().endsWith("."), plain.reason()));
	}

	@Property(tries = 600)
	void everyRoomIsLaidOutWithStripsToo(@ForAll @LongRange(min = 0, max = 10_000_000) long seed) {
		Rooms rooms = odd(seed).pattern(seed % 2 == 0 ? "battens-under-rail" : "boards-and-rails");
		RoomLayout layout = rooms.layout();
		assertEquals(rooms.room().getWalls().size(), layout.walls().size());
		layout.infeasible().forEach(plain -> assertTrue(plain.reason().endsWith("."), plain.reason()));
		layout.strips().forEach(strip -> assertTrue(strip.width().signum() > 0 && strip.height().signum() > 0
				&& strip.height().plus(strip.riseTop()).isMoreThan(strip.rise()), strip.toString()));
		assertEquals(layout.strips().count(), layout.strips().map(StripOutline::id).distinct().count());
	}

	@Property(tries = 500)
	void framesOnSlopesAreHighEnoughOnBothSidesAndKeepTheGapSquare(@ForAll @LongRange(min = 0, max = 10_000_000) long seed) {
		RoomLayout layout = odd(seed).layoutWithoutAdvice();
		layout.frames().filter(frame -> frame.role() == FrameRole.RUN).forEach(frame -> {
			Length right = frame.height().plus(frame.riseTop()).minus(frame.rise());
			assertTrue(frame.height().min(right).compareTo(Length.ofMillimetres(200)) >= 0, frame.toString());
		});
		for (WallLayout wall : layout.walls()) {
			for (RunLayout run : wall.runs()) {
				run.frames().stream().filter(frame -> frame.role() == FrameRole.RUN).forEach(frame -> {
					double slope = frame.rise().approximateMillimetres() / frame.width().approximateMillimetres();
					double along = frame.x().minus(run.x0()).approximateMillimetres();
					double plumb = frame.y().minus(run.y0()).approximateMillimetres() - slope * along;
					assertEquals(layout.gapY().approximateMillimetres(), plumb / Math.hypot(1, slope), 0.5, frame.toString());
				});
			}
		}
	}
}
