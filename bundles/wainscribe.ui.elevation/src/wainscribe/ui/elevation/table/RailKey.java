// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.elevation.table;

import java.util.Objects;

import wainscribe.model.Wall;

/**
 * The rail of the room as it runs along one wall.
 *
 * @param wall the wall
 */
public record RailKey(Wall wall) {

	/** Refuses null. */
	public RailKey {
		Objects.requireNonNull(wall);
	}
}
