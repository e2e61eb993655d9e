// SPDX-License-Identifier: EPL-2.0
package wainscribe.fabrication;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;

import wainscribe.model.Service;
import wainscribe.model.ServiceKind;
import wainscribe.model.Wall;
import wainscribe.model.length.Length;

/** The measured studs of a room's walls, and which of them its runs are already joined on; for one cut list only. */
final class WallStuds {

	private final Map<Wall, Set<Length>> joined = new HashMap<>();

	/**
	 * Returns the plan for a run of a wall that keeps off the joints of the runs before it.
	 *
	 * @param longest the longest length sold, null if not known
	 */
	ScarfPlan plan(Wall wall, Length longest) {
		List<Length> studs = wall.getServices().stream().filter(service -> service.getKind() == ServiceKind.STUD)
				.map(WallStuds::centre).filter(Objects::nonNull).toList();
		return new ScarfPlan(studs, Set.copyOf(joined.getOrDefault(wall, Set.of())), longest);
	}

	/** Notes where a run of a wall is joined. */
	void joined(Wall wall, List<Length> joints) {
		joined.computeIfAbsent(wall, key -> new HashSet<>()).addAll(joints);
	}

	/** A stud is measured at its middle; where a width was given, x is its left edge. */
	private static Length centre(Service stud) {
		if (stud.getX() == null || stud.getWidth() == null) {
			return stud.getX();
		}
		return stud.getX().plus(stud.getWidth().dividedBy(2));
	}
}
