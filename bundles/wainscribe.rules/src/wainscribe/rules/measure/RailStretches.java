// SPDX-License-Identifier: EPL-2.0
package wainscribe.rules.measure;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

import wainscribe.layout.RailBand;
import wainscribe.layout.RoomDesign;
import wainscribe.model.Box;
import wainscribe.model.Fixture;
import wainscribe.model.Opening;
import wainscribe.model.Wall;
import wainscribe.model.length.Length;
import wainscribe.model.outline.Outline;
import wainscribe.model.outline.WallShape;

/**
 * Where the rail runs on a wall: everywhere but where a cased opening, a large fixture or an electrical panel stands in its
 * band. A rail that burns stops short of what is hot, as the carpenter will stop it.
 */
final class RailStretches {

	private final RoomDesign design;
	private final RailBand band;
	private final boolean burns;

	private RailStretches(RoomDesign design, RailBand band) {
		this.design = design;
		this.band = band;
		this.burns = ThingKinds.burns(design.layout().material());
	}

	/** Returns the rail of a wall from left to right; empty where the pattern has none. */
	static List<Strip> of(RoomDesign design, Wall wall) {
		return design.layout().rail().map(band -> new RailStretches(design, band).on(wall)).orElse(List.of());
	}

	private List<Strip> on(Wall wall) {
		List<Strip> found = new ArrayList<>();
		Length end = SurveyedOutline.orZero(wall.getLength());
		Length from = Length.ZERO;
		for (Outline stop : stops(wall)) {
			if (stop.x0().min(end).isMoreThan(from)) {
				found.add(strip(wall, from, stop.x0().min(end)));
			}
			from = from.max(stop.x1());
		}
		if (end.isMoreThan(from)) {
			found.add(strip(wall, from, end));
		}
		return found;
	}

	private List<Outline> stops(Wall wall) {
		List<Outline> found = new ArrayList<>();
		for (Opening opening : wall.getOpenings()) {
			add(SurveyedOutline.cased(opening), wall, found);
		}
		for (Fixture fixture : wall.getFixtures()) {
			if (ThingKinds.stopsTrim(fixture)) {
				List<Outline> kept = burns ? HeatBelt.of(design, fixture, Length.ZERO)
						: List.of(SurveyedOutline.covered(design, fixture));
				kept.forEach(outline -> add(outline, wall, found));
			}
		}
		for (Box box : wall.getBoxes()) {
			if (ThingKinds.stopsTrim(box)) {
				add(SurveyedOutline.of(box), wall, found);
			}
		}
		found.sort(Comparator.comparing(Outline::x0).thenComparing(Outline::x1));
		return found;
	}

	private void add(Outline outline, Wall wall, List<Outline> found) {
		Length end = SurveyedOutline.orZero(wall.getLength());
		if (shape(wall, Length.ZERO, end).overlaps(outline)) {
			found.add(outline);
		}
	}

	private Strip strip(Wall wall, Length from, Length to) {
		return new Strip(wall, null, shape(wall, from, to), band.thickness());
	}

	private Quadrilateral shape(Wall wall, Length from, Length to) {
		WallShape floor = WallShape.of(wall);
		Length left = floor.floorAt(from);
		Length right = floor.floorAt(to);
		return Quadrilateral.upright(from, to, left.plus(band.bottom()), right.plus(band.bottom()), left.plus(band.top()),
				right.plus(band.top()));
	}
}
