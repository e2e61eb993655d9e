// SPDX-License-Identifier: EPL-2.0
package wainscribe.commands;

import wainscribe.model.Room;
import wainscribe.model.WainscribePackage;

/** Chooses the wall pattern of a room. */
public final class ChoosePatternCommand extends SetDecisionCommand {

	/**
	 * Creates a command.
	 *
	 * @param room    the room
	 * @param pattern id of the pattern, or {@code none}; null lets the home decide
	 */
	public ChoosePatternCommand(Room room, String pattern) {
		super(Messages.ChoosePatternCommand_Label, room, WainscribePackage.Literals.BRIEF__PATTERN, pattern);
	}
}
