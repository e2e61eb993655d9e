// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.elevation.table;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

import wainscribe.model.Axis;
import wainscribe.model.ReferenceLine;
import wainscribe.model.Room;
import wainscribe.model.Wall;

/**
 * A line laid on a wall, as it is pointed at there. A level guide runs along all walls and is one thing on each of them.
 *
 * @param wall the wall
 * @param line an axis or guide of the wall, or a level guide of its room
 */
public record LineKey(Wall wall, ReferenceLine line) {

	/** Refuses nulls. */
	public LineKey {
		Objects.requireNonNull(wall);
		Objects.requireNonNull(line);
	}

	/** Returns the keys of the lines that are shown on a wall. */
	public static List<LineKey> of(Wall wall, Overlays overlays) {
		List<ReferenceLine> lines = new ArrayList<>();
		if (overlays.shows(Overlay.GUIDES)) {
			lines.addAll(wall.getRoom().getGuides());
			lines.addAll(wall.getGuides());
		}
		if (overlays.shows(Overlay.AXES)) {
			lines.addAll(wall.getAxes());
		}
		return lines.stream().filter(line -> line.getAt() != null).map(line -> new LineKey(wall, line)).toList();
	}

	/** Tells whether the line is plumb; else it is level. */
	public boolean isPlumb() {
		return !(line.eContainer() instanceof Room);
	}

	/** Tells whether the line is an axis; else it is a guide. */
	public boolean isAxis() {
		return line instanceof Axis;
	}
}
