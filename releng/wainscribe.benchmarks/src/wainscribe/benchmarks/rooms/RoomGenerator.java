// SPDX-License-Identifier: EPL-2.0
package wainscribe.benchmarks.rooms;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;

import wainscribe.model.length.LengthUnit;

/**
 * Makes up rooms as they are found in houses: three to six level walls with doors, windows, outlets, switches and fixtures.
 * The same seed always gives the same room.
 */
public final class RoomGenerator {

	/** How much stands on the walls. */
	public enum Density {
		/** As usual in a house. */
		TYPICAL,
		/** Eight walls, two windows, a door and many plates on each: worse than a house has it. */
		CROWDED
	}

	private static final String[] PATTERNS = { "frames-under-rail", "frames-under-rail", "frames-two-tier", "frames-to-ceiling" };
	private static final String[] FITTINGS = { "vanity", "toilet", "heater", "fireplace", "grille", "thermostat", "towel-bar" };

	private final Random random;
	private final Tape tape;
	private final String name;

	/**
	 * Creates a generator of one room.
	 *
	 * @param seed decides everything
	 * @param unit of the tape
	 * @param name of the room
	 */
	public RoomGenerator(long seed, LengthUnit unit, String name) {
		random = new Random(seed * 0x9E3779B97F4A7C15L + 1);
		tape = new Tape(unit);
		this.name = name;
	}

	/** Returns the rows of the room: itself, its walls with what is on them, its brief. */
	public List<String> rows(Density density) {
		List<int[]> walls = density == Density.CROWDED ? oblong(8) : walls();
		int height = between(240, 270) * 10;
		List<String> rows = new ArrayList<>();
		rows.add("room," + name + ",,,,,," + tape.cell(height) + ",,,use=living" + (walls.size() % 2 == 0 && walls.size() < 8 ? "" : ";open=yes"));
		for (int i = 0; i < walls.size(); i++) {
			rows.add("wall," + name + ',' + wall(i) + ",,,," + tape.cell(walls.get(i)[0]) + ",,," + walls.get(i)[1] + ',');
		}
		int casing = between(60, 100);
		int door = random.nextInt(walls.size());
		for (int i = 0; i < walls.size(); i++) {
			WallFurniture wall = new WallFurniture(random, tape, name, wall(i), tape.rounded(walls.get(i)[0]), height, casing);
			if (density == Density.CROWDED) {
				crowd(wall);
			} else {
				furnish(wall, walls.get(i)[0], i == door);
			}
			rows.addAll(wall.rows());
		}
		rows.add(brief(density));
		return rows;
	}

	private static String wall(int index) {
		return String.valueOf((char) ('A' + index));
	}

	private int between(int least, int most) {
		return least + random.nextInt(most - least + 1);
	}

	/** Length and inside angle of each wall: an oblong, an oblong less a corner, or an alcove or bay whose walls do not close. */
	private List<int[]> walls() {
		int kind = random.nextInt(10);
		if (kind < 6) {
			int width = between(240, 640);
			int depth = between(200, 520);
			return List.of(wall(width, 90), wall(depth, 90), wall(width, 90), wall(depth, 90));
		}
		if (kind < 8) {
			int width = between(400, 700);
			int depth = between(380, 600);
			int cutWidth = between(100, width - 200);
			int cutDepth = between(100, depth - 200);
			return List.of(wall(width, 90), wall(depth - cutDepth, 90), wall(cutWidth, 270), wall(cutDepth, 90),
					wall(width - cutWidth, 90), wall(depth, 90));
		}
		return oblong(kind == 8 ? 3 : 5);
	}

	private List<int[]> oblong(int count) {
		List<int[]> walls = new ArrayList<>();
		for (int i = 0; i < count; i++) {
			walls.add(wall(count == 8 ? between(550, 700) : between(180, 520), 90));
		}
		return walls;
	}

	/** Sizes are drawn in centimetres so that opposite walls are equal on both tapes. */
	private static int[] wall(int centimetres, int angle) {
		return new int[] { centimetres * 10, angle };
	}

	private void furnish(WallFurniture wall, int length, boolean hasDoor) {
		if (hasDoor || random.nextInt(5) == 0) {
			wall.door();
		}
		int windows = length < 2200 ? random.nextInt(2) : random.nextInt(5) / 2;
		for (int i = 0; i < windows; i++) {
			wall.window(random.nextInt(3) == 0);
		}
		if (random.nextInt(3) == 0) {
			wall.fixture(FITTINGS[random.nextInt(FITTINGS.length)]);
		}
		for (int i = 0; i <= length / 2400; i++) {
			wall.outlet();
		}
	}

	private void crowd(WallFurniture wall) {
		wall.door();
		wall.window(true);
		wall.window(false);
		wall.fixture("grille");
		wall.fixture("thermostat");
		for (int i = 0; i < 6; i++) {
			wall.outlet();
		}
	}

	private String brief(Density density) {
		List<String> notes = new ArrayList<>();
		notes.add("pattern=" + (density == Density.CROWDED ? "frames-two-tier" : PATTERNS[random.nextInt(PATTERNS.length)]));
		notes.add("rail=" + tape.cell(between(80, 100) * 10));
		if (random.nextInt(8) == 0) {
			notes.add("frame-width=" + tape.cell(between(25, 40) * 10) + ".." + tape.cell(between(60, 90) * 10));
		}
		if (random.nextInt(2) == 0) {
			notes.add("stock=" + tape.cell(between(12, 16) * 200));
		}
		if (random.nextInt(4) == 0) {
			notes.add("material=plaster");
		}
		return "brief," + name + ",,,,,,,,," + String.join(";", notes);
	}
}
