// SPDX-License-Identifier: EPL-2.0
package wainscribe.takeoff;

import java.util.List;
import java.util.Objects;

/**
 * What a home takes. The lines of the home are those of all rooms bought together: a pack that one room opens serves the
 * next, so their sum is usually below that of the rooms bought one by one.
 *
 * @param home     client label
 * @param currency ISO 4217 code, empty if none is recorded
 * @param lines    for all rooms together, by group
 * @param totals   sums of these lines
 * @param rooms    each room for itself
 */
public record HomeTakeoff(String home, String currency, List<TakeoffLine> lines, TakeoffTotals totals,
		List<RoomTakeoff> rooms) {

	/** Copies the lists. */
	public HomeTakeoff {
		Objects.requireNonNull(home);
		Objects.requireNonNull(currency);
		Objects.requireNonNull(totals);
		lines = List.copyOf(lines);
		rooms = List.copyOf(rooms);
	}
}
