// SPDX-License-Identifier: EPL-2.0
package wainscribe.benchmarks.rooms;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/** Puts doors, windows, fixtures and plates on one wall, as survey rows; nothing overlaps. Sizes are usual ones. */
final class WallFurniture {

	private static final int TRIES = 12;
	private static final int CLEAR = 40;

	private final Random random;
	private final Tape tape;
	private final String room;
	private final String wall;
	private final int length;
	private final int height;
	private final int casing;
	private final List<int[]> taken = new ArrayList<>();
	private final List<String> rows = new ArrayList<>();

	WallFurniture(Random random, Tape tape, String room, String wall, int length, int height, int casing) {
		this.random = random;
		this.tape = tape;
		this.room = room;
		this.wall = wall;
		this.length = length;
		this.height = height;
		this.casing = casing;
	}

	/** Returns the rows written so far. */
	List<String> rows() {
		return rows;
	}

	private int between(int least, int most) {
		return least + random.nextInt(most - least + 1);
	}

	/** A door with a switch beside it. */
	void door() {
		int width = between(71, 91) * 10;
		int top = Math.min(between(198, 210) * 10, height - 150);
		int[] at = place(width, 0, top, casing);
		if (at.length > 0) {
			row("door", at[0], 0, width, top, "casing=" + tape.cell(casing) + ";swing=in-left");
			plate(at[0] + width + casing + between(80, 160), between(105, 120) * 10, "switch", between(1, 2));
		}
	}

	/** A window, often with a radiator under it. */
	void window(boolean warmed) {
		int width = between(60, 150) * 10;
		int sill = between(50, 118) * 10;
		int high = Math.min(between(90, 150) * 10, height - sill - 200);
		int[] at = place(width, sill, sill + high, casing);
		if (at.length > 0) {
			row("window", at[0], sill, width, high, "casing=" + tape.cell(casing));
			if (warmed && sill > 800) {
				int wide = width * between(70, 100) / 100;
				fixture("radiator", at[0] + (width - wide) / 2, between(8, 15) * 10, wide, between(45, 60) * 10, ";heat=hydronic");
			}
		}
	}

	/** An outlet at the height usual for them. */
	void outlet() {
		for (int i = 0; i < TRIES; i++) {
			if (plate(between(150, Math.max(151, length - 220)), between(25, 45) * 10, "receptacle", between(1, 5) / 4)) {
				return;
			}
		}
	}

	/** A fixture of a kind, at its usual place and size. */
	void fixture(String type) {
		switch (type) {
		case "vanity" -> somewhere(type, between(60, 120) * 10, 0, between(80, 88) * 10, "");
		case "toilet" -> somewhere(type, between(36, 50) * 10, 0, between(72, 80) * 10, "");
		case "heater" -> somewhere(type, between(60, 120) * 10, between(2, 10) * 10, between(15, 40) * 10, ";heat=electric");
		case "fireplace" -> somewhere(type, between(110, 150) * 10, 0, between(100, 125) * 10, ";heat=gas");
		case "grille" -> somewhere(type, between(25, 50) * 10, between(10, 20) * 10, between(15, 30) * 10, "");
		case "thermostat" -> somewhere(type, between(9, 13) * 10, between(135, 150) * 10, between(9, 13) * 10, "");
		case "towel-bar" -> somewhere(type, between(45, 75) * 10, between(115, 130) * 10, 60, "");
		default -> throw new IllegalArgumentException(type);
		}
	}

	private void somewhere(String type, int width, int y, int high, String note) {
		int[] at = place(width, y, y + high, 0);
		if (at.length > 0) {
			row("fixture", at[0], y, width, high, "type=" + type + note);
		}
	}

	private void fixture(String type, int x, int y, int width, int high, String note) {
		taken.add(new int[] { x, y, x + width, y + high });
		row("fixture", x, y, width, high, "type=" + type + note);
	}

	private boolean plate(int x, int y, String type, int gang) {
		int gangs = Math.max(1, gang);
		int width = 70 + 46 * (gangs - 1);
		if (x + width + CLEAR > length || !isFree(x, y, x + width, y + 114)) {
			return false;
		}
		taken.add(new int[] { x, y, x + width, y + 114 });
		row("box", x, y, width, 114, "type=" + type);
		return true;
	}

	/** Returns where something finds room, nothing if it does not. */
	private int[] place(int width, int y0, int y1, int margin) {
		for (int i = 0; i < TRIES && length - width - 2 * margin - 2 * CLEAR > 0; i++) {
			int x = CLEAR + margin + random.nextInt(length - width - 2 * margin - 2 * CLEAR);
			if (isFree(x - margin, y0 - margin, x + width + margin, y1 + margin)) {
				taken.add(new int[] { x - margin, y0 - margin, x + width + margin, y1 + margin });
				return new int[] { x };
			}
		}
		return new int[0];
	}

	private boolean isFree(int x0, int y0, int x1, int y1) {
		return taken.stream().noneMatch(other -> x0 - CLEAR < other[2] && other[0] < x1 + CLEAR && y0 < other[3] && other[1] < y1);
	}

	private void row(String kind, int x, int y, int width, int high, String note) {
		rows.add(String.join(",", kind, room, wall, kind + ' ' + (rows.size() + 1), tape.cell(x), tape.cell(y), tape.cell(width),
				tape.cell(high), "", "", note));
	}
}
