// SPDX-License-Identifier: EPL-2.0
package wainscribe.report;

import java.util.List;
import java.util.Objects;

import wainscribe.model.Home;
import wainscribe.takeoff.HomeTakeoff;
import wainscribe.takeoff.cutting.HomePlan;

/**
 * What a pack is made of; the same content always gives the same pack.
 *
 * @param home    the home
 * @param rooms   the rooms in their order
 * @param takeoff quantities of these rooms
 * @param cutting which piece of these rooms comes from which length
 */
public record PackContent(Home home, List<RoomContent> rooms, HomeTakeoff takeoff, HomePlan cutting) {

	/** Refuses nulls and copies the list. */
	public PackContent {
		Objects.requireNonNull(home);
		Objects.requireNonNull(takeoff);
		Objects.requireNonNull(cutting);
		rooms = List.copyOf(rooms);
	}
}
