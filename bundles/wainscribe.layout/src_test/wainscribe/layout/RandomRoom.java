// SPDX-License-Identifier: EPL-2.0
package wainscribe.layout;

import java.util.Random;

import wainscribe.model.FixtureType;
import wainscribe.model.HeatSource;
import wainscribe.model.Material;

/** Draws small rooms that make trouble: short walls, plates where frames want to end, windows over plates, heaters. */
public final class RandomRoom {

	private static final FixtureType[] FIXTURES = { FixtureType.RADIATOR, FixtureType.HEATER, FixtureType.RANGE,
			FixtureType.GRILLE, FixtureType.THERMOSTAT, FixtureType.TOWEL_BAR, FixtureType.VANITY };

	private final Random random;
	private final int mostWalls;
	private final int longestWall;
	private final StringBuilder said = new StringBuilder();
	private boolean inch;
	private Rooms rooms;

	public RandomRoom(Random random, int mostWalls) {
		this(random, mostWalls, 2000);
	}

	/** Draws rooms whose walls are at most so many millimetres long. */
	public RandomRoom(Random random, int mostWalls, int longestWall) {
		this.longestWall = longestWall;
		this.random = random;
		this.mostWalls = mostWalls;
	}

	/** Returns what the last room drawn looks like. */
	public String last() {
		return said.toString();
	}

	/** Returns a length between two sizes in millimetres, on a grid of 5 mm or 1/4 in. */
	private String between(int least, int most) {
		int value = least + random.nextInt(most - least + 1);
		return inch ? value * 10 / 254 + " " + random.nextInt(4) + "/4" : String.valueOf(value / 5 * 5);
	}

	private String note(String word, String... values) {
		said.append(word).append(' ').append(String.join(",", values)).append("; ");
		return word;
	}

	/** Draws a room. */
	public Rooms next() {
		inch = random.nextInt(3) == 0;
		rooms = inch ? Rooms.inches() : Rooms.millimetres();
		String height = between(2300, 2600);
		String rail = between(750, 1000);
		String pattern = new String[] { "frames-under-rail", "frames-under-rail", "frames-two-tier", "frames-to-ceiling" }[random.nextInt(4)];
		note(pattern, height, rail, inch ? "in" : "mm");
		rooms.height(height).rail(rail).pattern(pattern);
		rooms.brief(brief -> {
			if (random.nextInt(3) == 0) {
				brief.setGap(rooms.length(between(30, 120)));
			}
			if (random.nextInt(5) == 0) {
				brief.setGapY(rooms.length(between(40, 100)));
			}
			if (random.nextInt(6) == 0) {
				brief.setFrameWidthMin(rooms.length(between(200, 400)));
				brief.setFrameWidthMax(rooms.length(between(401, 700)));
			}
			if (random.nextInt(8) == 0) {
				brief.getStock().add(rooms.length(between(400, 2000)));
			}
			if (random.nextInt(6) == 0) {
				brief.setMaterial(Material.PLASTER);
			}
			note("gaps", String.valueOf(brief.getGap()), String.valueOf(brief.getGapY()), String.valueOf(brief.getFrameWidthMin()),
					String.valueOf(brief.getFrameWidthMax()), String.valueOf(brief.getStock()), String.valueOf(brief.getMaterial()));
		});
		int walls = 1 + random.nextInt(mostWalls);
		for (int i = 0; i < walls; i++) {
			wall(String.valueOf((char) ('A' + i)), pattern.equals("frames-two-tier") ? longestWall * 2 / 3 : longestWall);
		}
		return rooms;
	}

	private void wall(String name, int longest) {
		String length = between(150, longest);
		note("wall", name, length);
		rooms.wall(name, length);
		int things = random.nextInt(4);
		for (int i = 0; i < things; i++) {
			switch (random.nextInt(7)) {
			case 0 -> window(longest);
			case 6 -> highWindows(longest);
			case 1 -> door(longest);
			case 2 -> fixture(longest);
			default -> outlet(longest);
			}
		}
	}

	/** Half of the windows stand over a plate. */
	private void window(int longest) {
		int left = random.nextInt(longest);
		String x = between(left, left + 5);
		String y = between(300, 1200);
		String width = between(150, 900);
		String height = between(200, 1000);
		String casing = between(0, 90);
		note("window", x, y, width, height, casing);
		rooms.window(x, y, width, height, casing);
		if (random.nextBoolean()) {
			String plate = between(left, left + 500);
			String low = between(150, 600);
			note("outlet", plate, low, "70", "115");
			rooms.outlet(plate, low, inch ? "2 3/4" : "70", inch ? "4 1/2" : "115");
		}
	}

	/** One or two windows near each other above the rail, with plates about their edges. */
	private void highWindows(int longest) {
		int left = 250 + random.nextInt(Math.max(1, longest - 700));
		int width = 220 + random.nextInt(400);
		int right = left + width + random.nextInt(200);
		String sill = between(1080, 1150);
		note("windows", String.valueOf(left), String.valueOf(width), String.valueOf(right), sill);
		rooms.window(left + "mm", sill, width + "mm", "500mm", "30mm");
		if (random.nextInt(3) == 0) {
			rooms.window(right + "mm", sill, width + "mm", "500mm", "30mm");
		}
		int edge = random.nextBoolean() ? left - 30 : left + width + 30;
		for (int i = random.nextInt(3); i > 0; i--) {
			int x = edge - 150 + random.nextInt(300);
			String y = between(150, 400);
			note("outlet", String.valueOf(x), y);
			rooms.outlet(x + "mm", y, "70mm", "115mm");
		}
	}

	private void door(int longest) {
		String x = between(0, longest);
		String width = between(300, 900);
		String height = between(1900, 2200);
		String casing = between(0, 90);
		note("door", x, width, height, casing);
		rooms.door(x, width, height, casing);
	}

	private void outlet(int longest) {
		String x = between(0, longest);
		String y = between(100, random.nextBoolean() ? 500 : 1300);
		String width = between(70, 120);
		String height = between(70, 120);
		note("outlet", x, y, width, height);
		rooms.outlet(x, y, width, height);
	}

	/** A narrow radiator before a wide towel bar: what is made a barrier sticks out on both sides of another. */
	private void barOverRadiator(int longest) {
		int x = random.nextInt(longest);
		String y = between(150, 500);
		note("bar over radiator", String.valueOf(x), y);
		rooms.fixture(FixtureType.RADIATOR, x + 150 + "mm", y, "100mm", "200mm");
		rooms.fixture(FixtureType.TOWEL_BAR, x + "mm", y, 300 + random.nextInt(300) + "mm", "60mm");
	}

	private void fixture(int longest) {
		if (random.nextInt(4) == 0) {
			barOverRadiator(longest);
			return;
		}
		FixtureType type = FIXTURES[random.nextInt(FIXTURES.length)];
		String x = between(0, longest);
		String y = between(0, random.nextBoolean() ? 300 : 1200);
		String width = between(50, 500);
		String height = between(50, 600);
		boolean electric = random.nextBoolean();
		boolean behind = random.nextInt(5) == 0;
		note(type.getLiteral(), x, y, width, height, electric ? "electric" : "", behind ? "behind" : "");
		rooms.fixture(type, x, y, width, height, fixture -> {
			fixture.setHeat(electric ? HeatSource.ELECTRIC : HeatSource.HYDRONIC);
			fixture.setBehind(behind ? Boolean.TRUE : null);
		});
	}
}
