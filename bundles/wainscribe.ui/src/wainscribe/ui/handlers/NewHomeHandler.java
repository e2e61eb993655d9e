// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.handlers;

import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.commands.ExecutionException;
import org.eclipse.core.resources.IProject;
import org.eclipse.core.resources.ResourcesPlugin;
import org.eclipse.jface.window.Window;
import org.eclipse.jface.wizard.WizardDialog;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.ui.handlers.HandlerUtil;

import wainscribe.ui.newhome.NewHomeWizard;
import wainscribe.ui.session.HomeSessions;
import wainscribe.ui.survey.AddRoomsWizard;

/** Opens the wizard for a new home, and where wanted that for its rooms. */
public final class NewHomeHandler extends AbstractHandler {

	@Override
	public Object execute(ExecutionEvent event) throws ExecutionException {
		Shell shell = HandlerUtil.getActiveShellChecked(event);
		NewHomeWizard wizard = new NewHomeWizard(ResourcesPlugin.getWorkspace());
		if (new WizardDialog(shell, wizard).open() == Window.OK && wizard.wantsRooms()) {
			IProject home = wizard.project().orElseThrow();
			HomeSessions sessions = HandlerUtil.getActiveWorkbenchWindowChecked(event).getService(HomeSessions.class);
			new WizardDialog(shell, new AddRoomsWizard(sessions, home)).open();
		}
		return null;
	}
}
