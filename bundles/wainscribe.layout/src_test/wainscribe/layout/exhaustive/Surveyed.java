// SPDX-License-Identifier: EPL-2.0
package wainscribe.layout.exhaustive;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;

import wainscribe.model.Box;
import wainscribe.model.Fixture;
import wainscribe.model.HeatSource;
import wainscribe.model.Material;
import wainscribe.model.Opening;
import wainscribe.model.OpeningKind;
import wainscribe.model.Placed;
import wainscribe.model.Wall;
import wainscribe.model.length.Length;

/** What the survey puts on a wall for strips, read from the definition. Rectangles are {@code x0, y0, x1, y1}. */
final class Surveyed {

	private static final long MM = 8000;
	private static final Set<String> LARGE = Set.of("toilet", "bidet", "vanity", "basin", "sink", "tub", "shower", "heater",
			"radiator", "cabinet", "range", "cooktop", "hood", "appliance", "fireplace", "mirror", "washer");

	private final List<long[]> openings = new ArrayList<>();
	private final List<long[]> others = new ArrayList<>();
	/** Rectangle, margin, warning. */
	private final List<long[]> islands = new ArrayList<>();

	Surveyed(Wall wall, Material material) {
		for (Opening opening : wall.getOpenings()) {
			long[] r = rectangle(opening);
			long around = units(opening.getCasing()) + units(opening.getReveal());
			long below = opening.getKind() != OpeningKind.WINDOW ? 0 : opening.getApron() == null ? around : units(opening.getApron());
			openings.add(new long[] { r[0] - around, r[1] - below, r[2] + around, r[3] + around });
		}
		boolean burns = material != Material.PLASTER && material != Material.METAL;
		wall.getFixtures().forEach(fixture -> add(fixture, burns));
		for (Box box : wall.getBoxes()) {
			addIsland(box, 13, 25);
		}
	}

	private void add(Fixture fixture, boolean burns) {
		String type = fixture.getType().getLiteral();
		long[] r = rectangle(fixture);
		if (LARGE.contains(type) && !Boolean.TRUE.equals(fixture.getBehind())) {
			boolean heater = burns && type.equals("heater") && fixture.getHeat() == HeatSource.ELECTRIC;
			long around = heater ? 305 * MM : 0;
			long above = burns && Set.of("range", "cooktop").contains(type) ? 762 * MM : around;
			others.add(new long[] { r[0] - around, r[1] - around, r[2] + around, r[3] + above });
		} else if (Set.of("grille", "register").contains(type)) {
			addIsland(fixture, 25, 0);
		} else if (Set.of("thermostat", "keypad").contains(type)) {
			addIsland(fixture, 0, 25);
		} else if (Set.of("towel-bar", "towel-ring", "tp-holder", "robe-hook", "sconce", "grab-bar").contains(type)) {
			addIsland(fixture, 0, 10);
		}
	}

	private void addIsland(Placed placed, long margin, long warning) {
		long[] r = rectangle(placed);
		islands.add(new long[] { r[0], r[1], r[2], r[3], margin * MM, warning * MM });
	}

	private static long units(Length length) {
		return length == null ? 0 : length.units();
	}

	private static long[] rectangle(Placed placed) {
		long x = units(placed.getX());
		long y = units(placed.getY());
		return new long[] { x, y, x + units(placed.getWidth()), y + units(placed.getHeight()) };
	}

	/** Returns the cased openings. */
	List<long[]> openings() {
		return openings;
	}

	/** Returns the large fixtures, grown by what burning strips keep off them. */
	List<long[]> others() {
		return others;
	}

	/** Returns the islands with margin and warning. */
	List<long[]> islands() {
		return islands;
	}
}
