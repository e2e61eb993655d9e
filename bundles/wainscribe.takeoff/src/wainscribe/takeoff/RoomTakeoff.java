// SPDX-License-Identifier: EPL-2.0
package wainscribe.takeoff;

import java.util.List;
import java.util.Objects;

/**
 * What one room takes, bought for itself.
 *
 * @param room   name of the room
 * @param lines  by group
 * @param totals its sums
 */
public record RoomTakeoff(String room, List<TakeoffLine> lines, TakeoffTotals totals) {

	/** Copies the lines. */
	public RoomTakeoff {
		Objects.requireNonNull(room);
		Objects.requireNonNull(totals);
		lines = List.copyOf(lines);
	}
}
