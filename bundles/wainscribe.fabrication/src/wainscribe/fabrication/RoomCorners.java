// SPDX-License-Identifier: EPL-2.0
package wainscribe.fabrication;

import java.util.List;
import java.util.OptionalInt;

import wainscribe.model.Room;
import wainscribe.model.Wall;
import wainscribe.model.outline.CornerAngle;

/** Which walls meet in a room, and at what angle. */
record RoomCorners(Room room) {

	private static final int LEAST_CLOSED = 3;

	/** Returns the wall at the right end of a wall; empty at the end of an open room. */
	OptionalInt next(int wall) {
		int count = room.getWalls().size();
		if (wall + 1 < count) {
			return OptionalInt.of(wall + 1);
		}
		return closes(count) ? OptionalInt.of(0) : OptionalInt.empty();
	}

	/** Returns the wall at the left end of a wall; empty at the beginning of an open room. */
	OptionalInt previous(int wall) {
		int count = room.getWalls().size();
		if (wall > 0) {
			return OptionalInt.of(wall - 1);
		}
		return closes(count) ? OptionalInt.of(count - 1) : OptionalInt.empty();
	}

	/** Returns the inside angle at the right end of a wall in degrees. */
	double angleAfter(int wall) {
		List<Wall> walls = room.getWalls();
		return CornerAngle.of(walls.get(wall)).doubleValue();
	}

	private boolean closes(int count) {
		return count >= LEAST_CLOSED && !Boolean.TRUE.equals(room.getOpen());
	}
}
