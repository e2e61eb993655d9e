// SPDX-License-Identifier: EPL-2.0
package wainscribe.rules.hazards;

import java.util.ArrayList;
import java.util.List;

import wainscribe.model.ExistingTrim;
import wainscribe.model.Finish;
import wainscribe.model.Room;
import wainscribe.model.Wall;
import wainscribe.rules.Subject;

/** What the work disturbs of the paint that is there: coatings to be sanded or cut, and mouldings that go. */
final class DisturbedPaint {

	private DisturbedPaint() {
	}

	static List<Subject> in(Room room) {
		List<Subject> found = new ArrayList<>();
		for (Finish finish : room.getFinishes()) {
			if (Boolean.TRUE.equals(finish.getDisturb())) {
				found.add(Subject.of(finish));
			}
		}
		for (Wall wall : room.getWalls()) {
			for (ExistingTrim trim : wall.getTrims()) {
				if (Boolean.FALSE.equals(trim.getKeep())) {
					found.add(Subject.of(trim));
				}
			}
		}
		return found;
	}
}
