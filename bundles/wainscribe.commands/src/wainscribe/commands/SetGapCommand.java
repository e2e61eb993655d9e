// SPDX-License-Identifier: EPL-2.0
package wainscribe.commands;

import wainscribe.model.Room;
import wainscribe.model.WainscribePackage;
import wainscribe.model.length.Length;

/** Sets the gap between the frames of a room and at the ends of its runs. */
public final class SetGapCommand extends SetDecisionCommand {

	/**
	 * Creates a command.
	 *
	 * @param room the room
	 * @param gap  the gap; null lets the layout choose
	 */
	public SetGapCommand(Room room, Length gap) {
		super(Messages.SetGapCommand_Label, room, WainscribePackage.Literals.BRIEF__GAP, gap);
	}
}
