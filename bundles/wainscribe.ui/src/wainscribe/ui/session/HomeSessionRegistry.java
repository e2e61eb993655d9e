// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.session;

import static java.util.Objects.requireNonNull;

import java.io.IOException;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

import org.eclipse.core.resources.IFile;
import org.eclipse.core.resources.IProject;
import org.eclipse.core.resources.IResourceChangeEvent;
import org.eclipse.core.resources.IResourceChangeListener;
import org.eclipse.core.resources.IWorkspace;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.Status;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.widgets.Display;
import org.eclipse.ui.services.IDisposable;

import wainscribe.model.storage.HomeFolder;

/** Keeps the sessions that are open and counts who uses them. */
final class HomeSessionRegistry implements HomeSessions, IDisposable {

	private final IWorkspace workspace;
	private final Display display;
	private final RoomStudy study;
	private final Map<IProject, OpenHome> open = new HashMap<>();
	private final Map<HomeSession, Integer> users = new HashMap<>();
	private final ListenerSet<Listener> listeners = new ListenerSet<>();
	private final IResourceChangeListener projectWatch;

	HomeSessionRegistry(IWorkspace workspace, Display display, RoomStudy study) {
		this.workspace = requireNonNull(workspace);
		this.display = requireNonNull(display);
		this.study = requireNonNull(study);
		this.projectWatch = new HomeWatch(display, this::homesChanged, this::filesChanged);
		workspace.addResourceChangeListener(projectWatch, IResourceChangeEvent.POST_CHANGE);
	}

	@Override
	public List<IProject> homes() {
		return Arrays.stream(workspace.getRoot().getProjects()).filter(HomeSessionRegistry::holdsHome)
			.sorted(Comparator.comparing(IProject::getName, String.CASE_INSENSITIVE_ORDER)).toList();
	}

	@Override
	public HomeSession openHome(IProject project) throws CoreException {
		OpenHome session = open.get(project);
		if (session == null) {
			session = read(project);
			open.put(project, session);
		}
		users.merge(session, 1, Integer::sum);
		return session;
	}

	@Override
	public RoomSession openRoom(IFile file) throws CoreException {
		HomeSession home = openHome(file.getProject());
		for (RoomSession session : home.rooms()) {
			if (session.file().equals(file)) {
				((OpenRoom) session).use();
				return session;
			}
		}
		close(home);
		throw new CoreException(Status.error(NLS.bind(Messages.HomeSessionRegistry_NoRoomOfHome, file.getFullPath())));
	}

	@Override
	public void close(HomeSession session) {
		Integer left = users.computeIfPresent(session, (key, count) -> count - 1);
		if (left != null && left == 0) {
			users.remove(session);
			open.remove(session.project());
			((OpenHome) session).dispose();
		}
	}

	@Override
	public void close(RoomSession session) {
		((OpenRoom) session).release();
		close(session.homeSession());
	}

	@Override
	public void addListener(Listener listener) {
		listeners.add(listener);
	}

	@Override
	public void removeListener(Listener listener) {
		listeners.remove(listener);
	}

	@Override
	public void dispose() {
		workspace.removeResourceChangeListener(projectWatch);
		List.copyOf(open.values()).forEach(OpenHome::dispose);
		open.clear();
		users.clear();
	}

	/** Called in the user interface thread when homes come or go. */
	private void homesChanged() {
		listeners.tell(Listener::homesChanged);
	}

	/** Called in the user interface thread when files of a home were written; by its own session or by somebody else. */
	private void filesChanged(IProject project) {
		OpenHome session = open.get(project);
		if (session != null) {
			session.followFiles();
			if (session.followProfiles()) {
				homesChanged();
			}
		}
	}

	private OpenHome read(IProject project) throws CoreException {
		try {
			HomeFolder folder = HomeFolder.open(project.getLocation().toPath());
			return new OpenHome(project, folder, study, display);
		} catch (IOException e) {
			throw new CoreException(Status.error(e.getLocalizedMessage(), e));
		}
	}

	private static boolean holdsHome(IProject project) {
		return project.isOpen() && project.getLocation() != null && HomeFolder.isHome(project.getLocation().toPath());
	}
}
