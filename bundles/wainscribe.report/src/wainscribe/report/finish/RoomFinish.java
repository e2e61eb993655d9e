// SPDX-License-Identifier: EPL-2.0
package wainscribe.report.finish;

import java.util.List;
import java.util.Objects;

import wainscribe.finishes.suitability.RoomAir;

/**
 * The finishes of a room.
 *
 * @param room its name
 * @param air its air
 * @param zones coat by coat
 */
public record RoomFinish(String room, RoomAir air, List<ZoneFinish> zones) {

	/** Copies the list and refuses nulls. */
	public RoomFinish {
		Objects.requireNonNull(room);
		Objects.requireNonNull(air);
		zones = List.copyOf(zones);
	}
}
