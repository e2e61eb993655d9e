// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.handlers;

import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.commands.ExecutionException;
import org.eclipse.core.resources.IProject;
import org.eclipse.jface.wizard.WizardDialog;
import org.eclipse.ui.handlers.HandlerUtil;

import wainscribe.ui.session.HomeSession;
import wainscribe.ui.session.HomeSessions;
import wainscribe.ui.survey.AddRoomsWizard;

/** Opens the wizard that adds the rooms of a survey. */
public final class AddRoomsHandler extends AbstractHandler {

	@Override
	public Object execute(ExecutionEvent event) throws ExecutionException {
		HomeSessions sessions = HandlerUtil.getActiveWorkbenchWindowChecked(event).getService(HomeSessions.class);
		IProject home = Target.home(event).map(HomeSession::project).orElse(null);
		new WizardDialog(HandlerUtil.getActiveShellChecked(event), new AddRoomsWizard(sessions, home)).open();
		return null;
	}
}
