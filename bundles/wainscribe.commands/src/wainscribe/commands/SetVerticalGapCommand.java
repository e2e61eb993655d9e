// SPDX-License-Identifier: EPL-2.0
package wainscribe.commands;

import wainscribe.model.Room;
import wainscribe.model.WainscribePackage;
import wainscribe.model.length.Length;

/** Sets the gap above and below the frames of a room. */
public final class SetVerticalGapCommand extends SetDecisionCommand {

	/**
	 * Creates a command.
	 *
	 * @param room the room
	 * @param gap  the gap; null makes it as the gap between frames
	 */
	public SetVerticalGapCommand(Room room, Length gap) {
		super(Messages.SetVerticalGapCommand_Label, room, WainscribePackage.Literals.BRIEF__GAP_Y, gap);
	}
}
