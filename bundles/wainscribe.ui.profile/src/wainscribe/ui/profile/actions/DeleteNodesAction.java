// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.profile.actions;

import java.util.Objects;

import org.eclipse.jface.action.Action;
import org.eclipse.ui.actions.ActionFactory;

import wainscribe.ui.profile.Messages;

/** What Delete does on the desk. Always to be pressed: with nothing selected it does nothing. */
public final class DeleteNodesAction extends Action {

	private final SectionSteps steps;

	/** Creates the action. */
	public DeleteNodesAction(SectionSteps steps) {
		super(Messages.SectionSteps_Delete);
		this.steps = Objects.requireNonNull(steps);
		setId(ActionFactory.DELETE.getId());
	}

	@Override
	public void run() {
		if (steps.canDelete()) {
			steps.delete();
		}
	}
}
