// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.session;

import static java.util.Objects.requireNonNull;

import java.util.Optional;

import org.eclipse.core.runtime.Adapters;
import org.eclipse.jface.viewers.ISelection;
import org.eclipse.jface.viewers.IStructuredSelection;
import org.eclipse.ui.IEditorPart;
import org.eclipse.ui.IPartListener2;
import org.eclipse.ui.ISelectionListener;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.IWorkbenchPart;
import org.eclipse.ui.IWorkbenchPartReference;

/**
 * Knows which room, or which home, the designer looks at in a window: that of the editor she turned to last, or what she
 * selected since in a list of rooms.
 */
public final class RoomTracker implements IPartListener2, ISelectionListener {

	private final IWorkbenchPage page;
	private final Runnable changed;
	private RoomSession room;
	private HomeSession home;

	/**
	 * Starts to follow; knows at once what is looked at.
	 *
	 * @param page    the window's page
	 * @param changed told when it is another room or home than when the tracker was made, or than the last time
	 */
	public RoomTracker(IWorkbenchPage page, Runnable changed) {
		this.page = requireNonNull(page);
		this.changed = requireNonNull(changed);
		page.addPartListener(this);
		page.addSelectionListener(this);
		// whoever makes a tracker can't be told before it has it: an editor may be open already
		RoomSession shown = Adapters.adapt(page.getActiveEditor(), RoomSession.class);
		room = shown;
		home = shown == null ? null : shown.homeSession();
	}

	/** Returns the room; empty if there is none, or a whole home is looked at. */
	public Optional<RoomSession> room() {
		return Optional.ofNullable(room);
	}

	/** Returns the home, that of the room if there is one; empty if nothing is looked at. */
	public Optional<HomeSession> home() {
		return Optional.ofNullable(home);
	}

	/** Stops to follow. */
	public void stop() {
		page.removePartListener(this);
		page.removeSelectionListener(this);
	}

	@Override
	public void selectionChanged(IWorkbenchPart part, ISelection selection) {
		Object first = selection instanceof IStructuredSelection list ? list.getFirstElement() : null;
		if (first instanceof RoomSession chosen) {
			lookAt(chosen, chosen.homeSession());
		} else if (first instanceof HomeSession chosen) {
			lookAt(null, chosen);
		}
	}

	@Override
	public void partActivated(IWorkbenchPartReference reference) {
		if (reference.getPart(false) instanceof IEditorPart) {
			lookAtEditor();
		}
	}

	@Override
	public void partBroughtToTop(IWorkbenchPartReference reference) {
		partActivated(reference);
	}

	@Override
	public void partClosed(IWorkbenchPartReference reference) {
		if (reference.getPart(false) instanceof IEditorPart) {
			lookAtEditor();
		}
	}

	private void lookAtEditor() {
		RoomSession shown = Adapters.adapt(page.getActiveEditor(), RoomSession.class);
		if (shown != null) {
			lookAt(shown, shown.homeSession());
		} else if (page.getActiveEditor() == null) {
			lookAt(null, null);
		}
	}

	private void lookAt(RoomSession otherRoom, HomeSession otherHome) {
		if (otherRoom != room || otherHome != home) {
			room = otherRoom;
			home = otherHome;
			changed.run();
		}
	}
}
