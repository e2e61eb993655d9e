// SPDX-License-Identifier: EPL-2.0
package wainscribe.survey.closure;

import wainscribe.model.Room;

/** Checks whether the measured walls of a room close. */
public final class ClosureCheck {

	/** Checks a room; one with fewer than three walls or marked open is only measured. */
	public RoomClosure check(Room room) {
		throw new UnsupportedOperationException();
	}
}
