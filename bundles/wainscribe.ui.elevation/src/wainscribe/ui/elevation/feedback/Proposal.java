// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.elevation.feedback;

import java.util.List;
import java.util.Objects;
import java.util.function.Function;

import wainscribe.commands.EditCommand;
import wainscribe.layout.RoomDesign;
import wainscribe.model.Wall;
import wainscribe.model.outline.Outline;
import wainscribe.ui.elevation.snapping.SnapLine;

/**
 * What a drag would do if it ended now.
 *
 * @param command what would be executed; made for this proposal alone
 * @param wall    the wall it happens on
 * @param outline where the dragged thing would be
 * @param plumb   the plumb line an edge was drawn to, null for none
 * @param level   the level line an edge was drawn to, null for none
 * @param note    lines beside the pointer, from what the room would become
 */
public record Proposal(EditCommand command, Wall wall, Outline outline, SnapLine plumb, SnapLine level,
		Function<RoomDesign, List<String>> note) {

	/** Refuses nulls, the lines apart. */
	public Proposal {
		Objects.requireNonNull(command);
		Objects.requireNonNull(wall);
		Objects.requireNonNull(outline);
		Objects.requireNonNull(note);
	}
}
