// SPDX-License-Identifier: EPL-2.0
package wainscribe.fabrication;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

import wainscribe.model.length.Length;

/**
 * Every piece of moulding that a design needs, derived and never stored.
 *
 * @param room     name of the room
 * @param pieces   in walking order; on each wall frames, frames of mirrors, then rail, base and crown from left to right
 * @param removals existing moulding that goes, in walking order
 * @param blocks   corner and plinth blocks that runs stop at, in walking order
 */
public record CutList(String room, List<Piece> pieces, List<Removal> removals, List<Block> blocks) {

	/** Creates a list without blocks. */
	public CutList(String room, List<Piece> pieces, List<Removal> removals) {
		this(room, pieces, removals, List.of());
	}


	/** Copies the lists. */
	public CutList {
		Objects.requireNonNull(room);
		pieces = List.copyOf(pieces);
		removals = List.copyOf(removals);
		blocks = List.copyOf(blocks);
	}

	/** Returns the pieces by what they are cut from, in the order of their first piece. */
	public Map<String, List<Piece>> byProfile() {
		Map<String, List<Piece>> groups = new LinkedHashMap<>();
		pieces.forEach(piece -> groups.computeIfAbsent(piece.profile(), key -> new ArrayList<>()).add(piece));
		return groups;
	}

	/** Returns the sum of the long-point lengths. */
	public Length total() {
		return pieces.stream().map(Piece::longPoint).reduce(Length.ZERO, Length::plus);
	}
}
