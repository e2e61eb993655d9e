// SPDX-License-Identifier: EPL-2.0
package wainscribe.layout.axes;

import java.util.Objects;

import wainscribe.model.Axis;
import wainscribe.model.Wall;
import wainscribe.model.length.Length;

/**
 * A plumb line about which a wall is meant to be even.
 *
 * @param wall   the wall
 * @param name   what it belongs to, never empty
 * @param at     distance from the wall's left end
 * @param marked the axis that the designer has marked; null for that of a door, window or fixture in the middle of its wall
 */
public record WallAxis(Wall wall, String name, Length at, Axis marked) {

	/** Refuses nulls, the mark apart. */
	public WallAxis {
		Objects.requireNonNull(wall);
		Objects.requireNonNull(name);
		Objects.requireNonNull(at);
	}
}
