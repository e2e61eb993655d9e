// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui;

import java.util.List;

import org.eclipse.core.resources.IProject;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.ILog;
import org.eclipse.core.runtime.preferences.InstanceScope;
import org.eclipse.ui.IStartup;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.PlatformUI;
import org.osgi.service.prefs.BackingStoreException;
import org.osgi.service.prefs.Preferences;

import wainscribe.ui.session.HomeSession;
import wainscribe.ui.session.HomeSessions;

/** Opens a drawing when a workspace with a home in it is opened for the first time, so that nobody starts before a blank. */
public final class FirstRoom implements IStartup {

	private static final String NODE = "wainscribe.ui"; //$NON-NLS-1$
	private static final String SHOWN = "firstRoomShown"; //$NON-NLS-1$

	@Override
	public void earlyStartup() {
		PlatformUI.getWorkbench().getDisplay().asyncExec(FirstRoom::show);
	}

	private static void show() {
		Preferences memory = InstanceScope.INSTANCE.getNode(NODE);
		IWorkbenchWindow window = PlatformUI.getWorkbench().getActiveWorkbenchWindow();
		IWorkbenchPage page = window == null ? null : window.getActivePage();
		if (page == null || memory.getBoolean(SHOWN, false) || page.getEditorReferences().length > 0) {
			return;
		}
		HomeSessions sessions = window.getService(HomeSessions.class);
		List<IProject> homes = sessions.homes();
		if (homes.isEmpty()) {
			return;
		}
		try {
			HomeSession home = sessions.openHome(homes.get(0));
			try {
				if (!home.rooms().isEmpty()) {
					RoomEditors.open(page, home.rooms().get(0), true);
				}
			} finally {
				sessions.close(home);
			}
			memory.putBoolean(SHOWN, true);
			memory.flush();
		} catch (CoreException e) {
			ILog.get().log(e.getStatus());
		} catch (BackingStoreException e) {
			ILog.get().warn(e.getLocalizedMessage(), e);
		}
	}
}
