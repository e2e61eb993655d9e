// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.elevation.gaps;

import java.util.Optional;

import wainscribe.commands.EditCommand;
import wainscribe.commands.SetGapCommand;
import wainscribe.commands.SetVerticalGapCommand;
import wainscribe.layout.RoomLayout;
import wainscribe.model.Room;
import wainscribe.model.length.Length;
import wainscribe.ui.elevation.table.DrawingTable;

/**
 * The gaps of the room in one direction, and what sets them.
 *
 * @param table   the drawing table
 * @param upright true: the gap above and below frames; false: the one beside them
 */
public record GapChange(DrawingTable table, boolean upright) {

	/** Returns the gap as the room is, whatever is being tried. */
	public Length now() {
		RoomLayout layout = table.session().design().layout();
		return upright ? layout.gapY() : layout.gap();
	}

	/** Returns the gap nearest to a length that a tape shows; at least one mark wide. */
	public Length onTape(Length wanted) {
		Length mark = table.units().tapeMark();
		return wanted.roundedTo(mark).max(mark);
	}

	/** Returns the step that sets the gap. */
	public EditCommand to(Length gap) {
		Room room = table.session().room();
		return upright ? new SetVerticalGapCommand(room, gap) : new SetGapCommand(room, gap);
	}

	/** Returns the step that makes the gap wider, or narrower by less than zero; empty when there is no gap to change. */
	public Optional<EditCommand> by(Length wider) {
		boolean frames = table.session().design().layout().frames().findAny().isPresent();
		Length gap = now().plus(wider);
		return frames && gap.signum() > 0 ? Optional.of(to(gap)) : Optional.empty();
	}
}
