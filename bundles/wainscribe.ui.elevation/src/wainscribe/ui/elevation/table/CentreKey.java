// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.elevation.table;

import java.util.List;
import java.util.Objects;

import wainscribe.layout.RoomDesign;
import wainscribe.layout.axes.AxisCheck;
import wainscribe.layout.axes.AxisFit;
import wainscribe.model.Wall;
import wainscribe.model.length.Length;

/**
 * The axis of a door, window or fixture in the middle of its wall.
 *
 * @param wall the wall
 * @param name what it is called
 * @param at   distance from the wall's left end
 */
public record CentreKey(Wall wall, String name, Length at) {

	/** Refuses nulls. */
	public CentreKey {
		Objects.requireNonNull(wall);
		Objects.requireNonNull(name);
		Objects.requireNonNull(at);
	}

	/** Returns the keys of those that are shown on a wall: where frames can be compared with them, and none is marked there. */
	public static List<CentreKey> of(RoomDesign design, Wall wall, Overlays overlays) {
		return overlays.shows(Overlay.AXES) ? design.layout().of(wall).map(AxisCheck::of).orElse(List.of()).stream()
				.map(AxisFit::axis).filter(axis -> axis.marked() == null)
				.map(axis -> new CentreKey(wall, axis.name(), axis.at())).distinct().toList() : List.of();
	}
}
