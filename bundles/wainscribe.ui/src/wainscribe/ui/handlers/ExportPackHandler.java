// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.handlers;

import java.util.List;
import java.util.Optional;

import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.commands.ExecutionException;
import org.eclipse.core.resources.IProject;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.jface.wizard.WizardDialog;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.ui.handlers.HandlerUtil;

import wainscribe.ui.export.ExportPackWizard;
import wainscribe.ui.session.HomeSession;
import wainscribe.ui.session.HomeSessions;
import wainscribe.ui.session.RoomSession;

/** Opens the wizard that writes the client pack of the room or home that is meant, else of the first home. */
public final class ExportPackHandler extends AbstractHandler {

	@Override
	public Object execute(ExecutionEvent event) throws ExecutionException {
		Shell shell = HandlerUtil.getActiveShellChecked(event);
		HomeSessions sessions = HandlerUtil.getActiveWorkbenchWindowChecked(event).getService(HomeSessions.class);
		Optional<IProject> project = Target.home(event).map(HomeSession::project).or(() -> first(sessions));
		if (project.isEmpty()) {
			MessageDialog.openInformation(shell, Messages.ExportPackHandler_Title, Messages.ExportPackHandler_NoHome);
			return null;
		}
		try {
			HomeSession home = sessions.openHome(project.get());
			try {
				RoomSession room = Target.room(event).filter(home.rooms()::contains).orElse(null);
				new WizardDialog(shell, new ExportPackWizard(home, room)).open();
			} finally {
				sessions.close(home);
			}
		} catch (CoreException e) {
			throw new ExecutionException(e.getStatus().getMessage(), e);
		}
		return null;
	}

	private static Optional<IProject> first(HomeSessions sessions) {
		List<IProject> homes = sessions.homes();
		return homes.stream().findFirst();
	}
}
