// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.handlers;

import java.util.Optional;

import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.runtime.Adapters;
import org.eclipse.jface.viewers.ISelection;
import org.eclipse.jface.viewers.IStructuredSelection;
import org.eclipse.ui.handlers.HandlerUtil;

import wainscribe.ui.session.HomeSession;
import wainscribe.ui.session.RoomSession;

/** What a command is meant for: what is selected in a list of homes, else the room whose drawing is open. */
final class Target {

	private Target() {
	}

	/** Finds the room; empty if a home, or nothing, is meant. */
	static Optional<RoomSession> room(ExecutionEvent event) {
		Object selected = selected(event);
		if (selected instanceof RoomSession room) {
			return Optional.of(room);
		}
		return selected instanceof HomeSession ? Optional.empty()
			: Optional.ofNullable(Adapters.adapt(HandlerUtil.getActiveEditor(event), RoomSession.class));
	}

	/** Finds the home; empty if nothing is meant. */
	static Optional<HomeSession> home(ExecutionEvent event) {
		return selected(event) instanceof HomeSession home ? Optional.of(home) : room(event).map(RoomSession::homeSession);
	}

	private static Object selected(ExecutionEvent event) {
		ISelection selection = HandlerUtil.getCurrentSelection(event);
		return selection instanceof IStructuredSelection list ? list.getFirstElement() : null;
	}
}
