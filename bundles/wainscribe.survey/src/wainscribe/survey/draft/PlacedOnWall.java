// SPDX-License-Identifier: EPL-2.0
package wainscribe.survey.draft;

import java.util.ArrayList;
import java.util.List;

import wainscribe.model.Placed;
import wainscribe.model.Wall;

/** Everything with an outline on a wall. */
final class PlacedOnWall {

	private PlacedOnWall() {
	}

	/** Returns openings, boxes, fixtures, trim, services and placed frames. */
	static List<Placed> of(Wall wall) {
		List<Placed> all = new ArrayList<>(wall.getOpenings());
		all.addAll(wall.getBoxes());
		all.addAll(wall.getFixtures());
		all.addAll(wall.getTrims());
		all.addAll(wall.getServices());
		all.addAll(wall.getPlacedFrames());
		return all;
	}
}
