// SPDX-License-Identifier: EPL-2.0
package wainscribe.commands;

import wainscribe.model.Element;
import wainscribe.model.WainscribePackage;

/** Gives an element another name. */
public final class RenameElementCommand extends SetFeatureCommand {

	/**
	 * Creates a command.
	 *
	 * @param element the element
	 * @param name    its new name, null for none
	 */
	public RenameElementCommand(Element element, String name) {
		super(element, WainscribePackage.Literals.ELEMENT__NAME, name, Messages.RenameElementCommand_Name);
	}
}
