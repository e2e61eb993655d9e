// SPDX-License-Identifier: EPL-2.0
package wainscribe.rules.measure;

import java.util.ArrayList;
import java.util.List;

import wainscribe.layout.RoomDesign;
import wainscribe.layout.Tier;
import wainscribe.model.Box;
import wainscribe.model.Fixture;
import wainscribe.model.FixtureType;
import wainscribe.model.HeatSource;
import wainscribe.model.Opening;
import wainscribe.model.Wall;
import wainscribe.model.length.Length;
import wainscribe.model.outline.Outline;

/**
 * What parts a tier of a wall into runs: cased openings, large fixtures and panels that reach into it. From an electric
 * heater a run ends where the gap completes the distance that burning things keep.
 */
final class TierStops {

	private static final Length FROM_HEATER = Length.ofMillimetres(305);
	private static final Length ABOVE_COOKTOP = Length.ofMillimetres(762);
	private static final Length FROM_FIRE = Length.ofMillimetres(152);

	private final RoomDesign design;
	private final RoomHeights heights;

	TierStops(RoomDesign design, RoomHeights heights) {
		this.design = design;
		this.heights = heights;
	}

	/** Returns the outlines that reach into a tier, in no particular order. */
	List<Outline> of(Wall wall, Tier tier) {
		List<Outline> found = new ArrayList<>();
		for (Opening opening : wall.getOpenings()) {
			found.add(SurveyedOutline.cased(opening));
		}
		for (Fixture fixture : wall.getFixtures()) {
			if (ThingKinds.stopsTrim(fixture)) {
				found.addAll(kept(fixture));
			}
		}
		for (Box box : wall.getBoxes()) {
			if (ThingKinds.stopsTrim(box)) {
				found.add(SurveyedOutline.of(box));
			}
		}
		found.removeIf(outline -> !reaches(outline, wall, tier));
		return found;
	}

	private List<Outline> kept(Fixture fixture) {
		Outline outline = SurveyedOutline.of(fixture);
		if (!ThingKinds.burns(design.layout().material())) {
			return List.of(outline);
		}
		if (fixture.getType() == FixtureType.HEATER && fixture.getHeat() == HeatSource.ELECTRIC) {
			return List.of(outline.grown(completing(FROM_HEATER)));
		}
		if (fixture.getType() == FixtureType.RANGE || fixture.getType() == FixtureType.COOKTOP) {
			return List.of(outline.grown(Length.ZERO, Length.ZERO, ABOVE_COOKTOP));
		}
		if (fixture.getType() == FixtureType.FIREPLACE) {
			return List.of(outline, SurveyedOutline.fireOpening(fixture).grown(completing(FROM_FIRE)));
		}
		return List.of(outline);
	}

	private Length completing(Length distance) {
		return distance.minus(design.layout().gap()).max(Length.ZERO);
	}

	private boolean reaches(Outline outline, Wall wall, Tier tier) {
		boolean whollyBelow = heights.lowerEdge(wall, tier, outline.x0()).map(edge -> !outline.y1().isMoreThan(edge)).orElse(false);
		boolean whollyAbove = heights.upperEdge(wall, tier, outline.x0()).map(edge -> !outline.y0().isLessThan(edge)).orElse(false);
		return !whollyBelow && !whollyAbove;
	}
}
