// SPDX-License-Identifier: EPL-2.0
package wainscribe.report;

import java.util.List;
import java.util.Objects;

import wainscribe.model.Home;
import wainscribe.takeoff.HomeTakeoff;

/**
 * What a pack is made of; the same content always gives the same pack.
 *
 * @param home    the home
 * @param rooms   the rooms in their order
 * @param takeoff quantities of these rooms
 */
public record PackContent(Home home, List<RoomContent> rooms, HomeTakeoff takeoff) {

	/** Refuses nulls and copies the list. */
	public PackContent {
		Objects.requireNonNull(home);
		Objects.requireNonNull(takeoff);
		rooms = List.copyOf(rooms);
	}
}
