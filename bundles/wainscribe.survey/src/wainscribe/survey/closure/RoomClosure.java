// SPDX-License-Identifier: EPL-2.0
package wainscribe.survey.closure;

import java.math.BigDecimal;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

import wainscribe.model.length.Length;

/**
 * How well the measured walls of a room close, and what should be measured again.
 *
 * @param room       name of the room
 * @param verdict    what to do about it
 * @param closure    distance between start and end of the walk round the walls, in millimetres to 0.001; null unless the
 *                   room was checked
 * @param angleMiss  sum of the inside angles less (n - 2) x 180, in degrees; null unless the room was checked
 * @param perimeter  sum of the wall lengths
 * @param area       floor area in square metres to 0.0001, after the misclosure is spread over the walls; null unless the
 *                   room was checked
 * @param walls      number of walls
 * @param likeliest  name of the wall most likely wrong; null if the room closes or was not checked
 * @param doubtful   measurements to take again
 */
public record RoomClosure(String room, Verdict verdict, BigDecimal closure, BigDecimal angleMiss, Length perimeter,
		BigDecimal area, int walls, String likeliest, List<Doubt> doubtful) {

	/** What to do about a closure. */
	public enum Verdict {
		/** Fewer than three walls, or the walls are not meant to close. */
		NOT_CHECKED,
		/** Within what a tape can do. */
		CLOSES,
		/** Above 13 mm + 0.1 % of the perimeter. */
		DOUBTFUL,
		/** Above 5 % of the perimeter, or the angles miss by more than 5 degrees. */
		REFUSED
	}

	/** Copies the list. */
	public RoomClosure {
		Objects.requireNonNull(room);
		Objects.requireNonNull(verdict);
		Objects.requireNonNull(perimeter);
		doubtful = List.copyOf(doubtful);
	}

	/** Returns the same with other doubtful measurements. */
	public RoomClosure withDoubts(List<Doubt> doubts) {
		return new RoomClosure(room, verdict, closure, angleMiss, perimeter, area, walls, likeliest, doubts);
	}

	/** Returns the wall most likely wrong, if any is. */
	public Optional<String> likeliestWall() {
		return Optional.ofNullable(likeliest);
	}
}
