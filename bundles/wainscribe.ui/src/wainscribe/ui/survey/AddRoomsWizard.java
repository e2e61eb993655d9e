// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.survey;

import static java.util.Objects.requireNonNull;

import java.lang.reflect.InvocationTargetException;
import java.nio.file.Path;

import org.eclipse.core.resources.IProject;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.jface.wizard.Wizard;

import wainscribe.ui.session.HomeSession;
import wainscribe.ui.session.HomeSessions;
import wainscribe.ui.session.RoomSession;

/** Reads a tape-measure survey into a home, after showing what is in it and what would change. */
public final class AddRoomsWizard extends Wizard {

	private final HomeSessions sessions;
	private final SurveyPage page;

	/**
	 * Creates the wizard.
	 *
	 * @param sessions the homes of the workspace
	 * @param home     the home proposed; null for the first one
	 */
	public AddRoomsWizard(HomeSessions sessions, IProject home) {
		this.sessions = requireNonNull(sessions);
		this.page = new SurveyPage(sessions, home);
		setWindowTitle(Messages.AddRoomsWizard_Title);
		setNeedsProgressMonitor(true);
	}

	@Override
	public void addPages() {
		addPage(page);
	}

	@Override
	public boolean performFinish() {
		Path file = page.file();
		HomeSession home = null;
		try {
			home = sessions.openHome(page.home());
			for (RoomSession room : home.rooms()) {
				if (room.isDirty()) {
					room.save(null);
				}
			}
			getContainer().run(true, false, new SurveyIntoHome(file, page.home().getLocation().toPath()));
			home.reload(null);
			return true;
		} catch (InvocationTargetException e) {
			page.refuse(e.getCause().getLocalizedMessage());
		} catch (CoreException e) {
			page.refuse(e.getStatus().getMessage());
		} catch (InterruptedException e) {
			Thread.currentThread().interrupt();
		} finally {
			if (home != null) {
				sessions.close(home);
			}
		}
		return false;
	}
}
