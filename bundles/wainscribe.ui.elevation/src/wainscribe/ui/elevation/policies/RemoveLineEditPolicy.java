// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.elevation.policies;

import org.eclipse.gef.commands.Command;
import org.eclipse.gef.editpolicies.ComponentEditPolicy;
import org.eclipse.gef.requests.GroupRequest;

import wainscribe.commands.RemoveLineCommand;
import wainscribe.ui.drafting.history.ModelCommand;
import wainscribe.ui.elevation.table.LineKey;

/** Takes an axis or a guide away. */
public final class RemoveLineEditPolicy extends ComponentEditPolicy {

	@Override
	protected Command createDeleteCommand(GroupRequest request) {
		return new ModelCommand(new RemoveLineCommand(((LineKey) getHost().getModel()).line()));
	}
}
