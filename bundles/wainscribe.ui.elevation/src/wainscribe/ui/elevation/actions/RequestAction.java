// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.elevation.actions;

import org.eclipse.gef.EditPart;
import org.eclipse.gef.Request;
import org.eclipse.gef.commands.Command;
import org.eclipse.gef.commands.CompoundCommand;
import org.eclipse.gef.ui.actions.SelectionAction;
import org.eclipse.ui.IWorkbenchPart;

import wainscribe.ui.elevation.TableIcon;

/** Asks everything that is selected for the same, and does it as one step. */
public final class RequestAction extends SelectionAction {

	private final Object type;

	/**
	 * Creates an action.
	 *
	 * @param part the editor
	 * @param id   id of the action
	 * @param text its name
	 * @param icon its drawing
	 * @param type type of the request
	 */
	public RequestAction(IWorkbenchPart part, String id, String text, TableIcon icon, Object type) {
		super(part);
		this.type = type;
		setId(id);
		setText(text);
		setImageDescriptor(icon.descriptor());
	}

	@Override
	protected boolean calculateEnabled() {
		return command().canExecute();
	}

	@Override
	public void run() {
		execute(command());
	}

	/** Two frames of one tier ask for the same step: one of them is enough. */
	private Command command() {
		CompoundCommand all = new CompoundCommand();
		Request request = new Request(type);
		for (Object selected : getSelectedObjects()) {
			if (selected instanceof EditPart part && all.isEmpty()) {
				Command command = part.getCommand(request);
				if (command != null && command.canExecute()) {
					all.setLabel(command.getLabel());
					all.add(command);
				}
			}
		}
		return all;
	}
}
