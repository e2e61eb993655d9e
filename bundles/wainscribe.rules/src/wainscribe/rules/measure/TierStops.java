// SPDX-License-Identifier: EPL-2.0
package wainscribe.rules.measure;

import java.util.ArrayList;
import java.util.List;

import wainscribe.layout.RoomDesign;
import wainscribe.layout.Tier;
import wainscribe.model.Box;
import wainscribe.model.Fixture;
import wainscribe.model.Opening;
import wainscribe.model.Wall;
import wainscribe.model.outline.Outline;

/**
 * What parts a tier of a wall into runs: cased openings, large fixtures and panels that reach into it. From an electric
 * heater a run ends where the gap completes the distance that burning things keep.
 */
public final class TierStops {

	private final RoomDesign design;
	private final RoomHeights heights;

	/** Prepares the tiers of a room. */
	public TierStops(RoomDesign design, RoomHeights heights) {
		this.design = design;
		this.heights = heights;
	}

	/** Returns the outlines that reach into a tier, in no particular order. */
	public List<Outline> of(Wall wall, Tier tier) {
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
		return ThingKinds.burns(design.layout().material()) ? HeatBelt.of(fixture, design.layout().gap())
				: List.of(SurveyedOutline.of(fixture));
	}

	private boolean reaches(Outline outline, Wall wall, Tier tier) {
		boolean whollyBelow = heights.lowerEdge(wall, tier, outline.x0()).map(edge -> !outline.y1().isMoreThan(edge)).orElse(false);
		boolean whollyAbove = heights.upperEdge(wall, tier, outline.x0()).map(edge -> !outline.y0().isLessThan(edge)).orElse(false);
		return !whollyBelow && !whollyAbove;
	}
}
