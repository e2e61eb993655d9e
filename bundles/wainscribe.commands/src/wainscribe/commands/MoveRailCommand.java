// SPDX-License-Identifier: EPL-2.0
package wainscribe.commands;

import wainscribe.model.Room;
import wainscribe.model.WainscribePackage;
import wainscribe.model.length.Length;

/** Moves the rail of a room up or down. */
public final class MoveRailCommand extends SetDecisionCommand {

	/**
	 * Creates a command.
	 *
	 * @param room the room
	 * @param top  the new height of the rail's upper edge from the finished floor; null lets the home decide
	 */
	public MoveRailCommand(Room room, Length top) {
		super(Messages.MoveRailCommand_Label, room, WainscribePackage.Literals.BRIEF__RAIL, top);
	}
}
