// SPDX-License-Identifier: EPL-2.0
package wainscribe.rules.measure;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import wainscribe.layout.RoomDesign;
import wainscribe.layout.Tier;
import wainscribe.model.Box;
import wainscribe.model.Fixture;
import wainscribe.model.Opening;
import wainscribe.model.Wall;
import wainscribe.model.length.Length;
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
		return ThingKinds.burns(design.layout().material()) ? HeatBelt.of(design, fixture, design.layout().gap())
				: List.of(SurveyedOutline.covered(design, fixture));
	}

	/** On a slope a thing may reach into the tier with one end only. */
	private boolean reaches(Outline outline, Wall wall, Tier tier) {
		Optional<Length> lowerLeft = heights.lowerEdge(wall, tier, outline.x0());
		Optional<Length> lowerRight = heights.lowerEdge(wall, tier, outline.x1());
		Optional<Length> upperLeft = heights.upperEdge(wall, tier, outline.x0());
		Optional<Length> upperRight = heights.upperEdge(wall, tier, outline.x1());
		Length under = lowerLeft.orElse(outline.y0()).min(lowerRight.orElse(outline.y0())).min(outline.y0());
		Length over = upperLeft.orElse(outline.y1()).max(upperRight.orElse(outline.y1())).max(outline.y1());
		return Quadrilateral.upright(outline.x0(), outline.x1(), lowerLeft.orElse(under), lowerRight.orElse(under),
				upperLeft.orElse(over), upperRight.orElse(over)).overlaps(outline);
	}
}
