// SPDX-License-Identifier: EPL-2.0
package wainscribe.rules.measure;

import java.util.List;
import java.util.stream.Stream;

import wainscribe.model.Wall;
import wainscribe.model.outline.Outline;

/** Outlines of the small things on a wall that mouldings must clear but that do not stop a run. */
final class Islands {

	private Islands() {
	}

	static List<Outline> on(Wall wall) {
		Stream<Outline> plates = wall.getBoxes().stream().filter(box -> !ThingKinds.stopsTrim(box)).map(SurveyedOutline::of);
		Stream<Outline> fixtures = wall.getFixtures().stream().filter(fixture -> ThingKinds.isAccessory(fixture)
				|| ThingKinds.isControl(fixture) || ThingKinds.isAirGrille(fixture)).map(SurveyedOutline::of);
		return Stream.concat(plates, fixtures).toList();
	}
}
