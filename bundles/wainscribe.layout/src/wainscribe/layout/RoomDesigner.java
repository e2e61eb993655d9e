// SPDX-License-Identifier: EPL-2.0
package wainscribe.layout;

import wainscribe.model.Home;
import wainscribe.model.Room;

/** Derives the design of a room. Implementations keep no state; the same room always gives the same design. */
public interface RoomDesigner {

	/**
	 * Resolves the brief of a room.
	 *
	 * @param home the home
	 * @param room one of its rooms
	 * @return the decisions that hold
	 */
	EffectiveBrief brief(Home home, Room room);

	/**
	 * Lays out a room for the given decisions.
	 *
	 * @param home  the home
	 * @param room  one of its rooms
	 * @param brief the decisions, as {@link #brief} returns them or changed for a trial
	 * @return the design; its layout may hold plain stretches but is never null
	 * @throws IllegalArgumentException if the brief names an unknown pattern
	 */
	RoomDesign design(Home home, Room room, EffectiveBrief brief);

	/** Lays out a room by its own brief. */
	default RoomDesign design(Home home, Room room) {
		return design(home, room, brief(home, room));
	}
}
