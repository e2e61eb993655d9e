// SPDX-License-Identifier: EPL-2.0
package wainscribe.layout;

import java.util.Objects;

import wainscribe.model.Home;
import wainscribe.model.Room;

/**
 * A room with everything that follows from its survey and its brief; what drawings, cut lists, quantities and checks start
 * from.
 *
 * @param home   the home
 * @param room   the room
 * @param brief  the decisions that hold
 * @param layout what they lead to
 */
public record RoomDesign(Home home, Room room, EffectiveBrief brief, RoomLayout layout) {

	/** Refuses nulls. */
	public RoomDesign {
		Objects.requireNonNull(home);
		Objects.requireNonNull(room);
		Objects.requireNonNull(brief);
		Objects.requireNonNull(layout);
	}
}
