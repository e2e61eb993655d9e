// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.profile.newprofile;

import java.util.List;

import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.commands.ExecutionException;
import org.eclipse.core.resources.IFile;
import org.eclipse.core.resources.IProject;
import org.eclipse.core.runtime.Adapters;
import org.eclipse.jface.viewers.IStructuredSelection;
import org.eclipse.jface.window.Window;
import org.eclipse.jface.wizard.WizardDialog;
import org.eclipse.ui.IEditorPart;
import org.eclipse.ui.IFileEditorInput;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.handlers.HandlerUtil;

import wainscribe.ui.ProfileEditors;
import wainscribe.ui.session.HomeProfile;
import wainscribe.ui.session.HomeSession;
import wainscribe.ui.session.HomeSessions;
import wainscribe.ui.session.RoomSession;

/** Opens the wizard that makes a profile from a classical shape, and then the profile. */
public final class NewProfileHandler extends AbstractHandler {

	@Override
	public Object execute(ExecutionEvent event) throws ExecutionException {
		IWorkbenchWindow window = HandlerUtil.getActiveWorkbenchWindowChecked(event);
		HomeSessions sessions = window.getService(HomeSessions.class);
		NewProfileWizard wizard = new NewProfileWizard(sessions, meant(event, sessions.homes()));
		if (new WizardDialog(window.getShell(), wizard).open() == Window.OK) {
			open(window, wizard.file());
		}
		return null;
	}

	private static void open(IWorkbenchWindow window, IFile file) throws ExecutionException {
		try {
			ProfileEditors.open(window.getActivePage(), file);
		} catch (PartInitException e) {
			throw new ExecutionException(e.getLocalizedMessage(), e);
		}
	}

	/** Returns the home that is selected or edited, else the first; null if there is none. */
	private static IProject meant(ExecutionEvent event, List<IProject> homes) {
		Object selected = HandlerUtil.getCurrentSelection(event) instanceof IStructuredSelection list ? list.getFirstElement() : null;
		IProject project = switch (selected) {
			case HomeSession home -> home.project();
			case RoomSession room -> room.homeSession().project();
			case HomeProfile profile -> profile.home().project();
			case null, default -> edited(HandlerUtil.getActiveEditor(event));
		};
		return homes.contains(project) || homes.isEmpty() ? project : homes.getFirst();
	}

	private static IProject edited(IEditorPart editor) {
		IFileEditorInput input = editor == null ? null : Adapters.adapt(editor.getEditorInput(), IFileEditorInput.class);
		return input == null ? null : input.getFile().getProject();
	}
}
