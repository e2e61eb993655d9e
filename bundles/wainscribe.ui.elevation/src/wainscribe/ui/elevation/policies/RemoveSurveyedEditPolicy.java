// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.elevation.policies;

import org.eclipse.gef.commands.Command;
import org.eclipse.gef.editpolicies.ComponentEditPolicy;
import org.eclipse.gef.requests.GroupRequest;

import wainscribe.commands.RemoveElementCommand;
import wainscribe.model.Placed;
import wainscribe.ui.drafting.history.ModelCommand;

/** Takes a surveyed thing off its wall. */
public final class RemoveSurveyedEditPolicy extends ComponentEditPolicy {

	@Override
	protected Command createDeleteCommand(GroupRequest request) {
		return new ModelCommand(new RemoveElementCommand((Placed) getHost().getModel()));
	}
}
