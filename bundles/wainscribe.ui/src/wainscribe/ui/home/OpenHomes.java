// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.home;

import static java.util.Objects.requireNonNull;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;

import org.eclipse.core.resources.IProject;
import org.eclipse.core.runtime.CoreException;

import wainscribe.ui.session.HomeSession;
import wainscribe.ui.session.HomeSessions;
import wainscribe.ui.session.RoomSession;
import wainscribe.ui.session.RoomSessionListener;

/** Keeps all homes of the workspace open while a view shows them. */
final class OpenHomes implements HomeSessions.Listener, RoomSessionListener {

	/**
	 * What changed.
	 *
	 * @param room the room whose state changed; null if homes or rooms came or went
	 */
	record News(RoomSession room) {
	}

	private final HomeSessions sessions;
	private final Consumer<News> view;
	private final Map<IProject, Object> shown = new LinkedHashMap<>();

	OpenHomes(HomeSessions sessions, Consumer<News> view) {
		this.sessions = requireNonNull(sessions);
		this.view = requireNonNull(view);
	}

	/** Opens what is there and follows what comes. */
	void follow() {
		sessions.addListener(this);
		homesChanged();
	}

	/** Gives all homes back. */
	void close() {
		sessions.removeListener(this);
		shown.values().forEach(this::giveBack);
		shown.clear();
	}

	/** Returns {@link HomeSession}s and {@link UnreadableHome}s by name. */
	List<Object> shown() {
		return new ArrayList<>(shown.values());
	}

	@Override
	public void homesChanged() {
		List<IProject> present = sessions.homes();
		Map<IProject, Object> now = new LinkedHashMap<>();
		for (IProject project : present) {
			Object known = shown.get(project);
			now.put(project, known instanceof HomeSession ? known : open(project));
		}
		shown.values().stream().filter(home -> !now.containsValue(home)).forEach(this::giveBack);
		shown.clear();
		shown.putAll(now);
		for (Object home : now.values()) {
			if (home instanceof HomeSession session) {
				session.rooms().forEach(room -> room.addListener(this));
			}
		}
		view.accept(new News(null));
	}

	@Override
	public void designChanged(RoomSession room) {
		view.accept(new News(room));
	}

	@Override
	public void findingsChanged(RoomSession room) {
		view.accept(new News(room));
	}

	@Override
	public void historyChanged(RoomSession room) {
		view.accept(new News(room));
	}

	private Object open(IProject project) {
		try {
			return sessions.openHome(project);
		} catch (CoreException e) {
			return new UnreadableHome(project, e.getStatus().getMessage());
		}
	}

	private void giveBack(Object home) {
		if (home instanceof HomeSession session) {
			session.rooms().forEach(room -> room.removeListener(this));
			sessions.close(session);
		}
	}
}
