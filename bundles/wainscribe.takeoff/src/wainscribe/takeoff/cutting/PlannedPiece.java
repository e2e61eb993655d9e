// SPDX-License-Identifier: EPL-2.0
package wainscribe.takeoff.cutting;

import java.util.Objects;
import java.util.Optional;

import wainscribe.fabrication.Piece;
import wainscribe.model.length.Length;

/**
 * A piece of a cutting plan.
 *
 * @param room   name of its room
 * @param label  its label in the room; a run longer than every length comes in parts, {@code A/rail-1 part 2}
 * @param length cut length over the long points
 * @param cut    the piece of the cut list; null for one of an accepted plan that the design no longer has
 */
public record PlannedPiece(String room, String label, Length length, Piece cut) {

	/** Refuses nulls but for the piece. */
	public PlannedPiece {
		Objects.requireNonNull(room);
		Objects.requireNonNull(label);
		Objects.requireNonNull(length);
	}

	/** Returns the piece of the cut list; empty for one that the design no longer has. */
	public Optional<Piece> piece() {
		return Optional.ofNullable(cut);
	}

	/** Returns a label that no other piece of the home has. */
	String key() {
		return room + '\n' + label;
	}
}
