// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui;

import org.eclipse.ui.IEditorPart;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.part.FileEditorInput;

import wainscribe.ui.session.RoomSession;

/** Opens rooms in the editor that draws their elevations. */
public final class RoomEditors {

	/** Id of the editor that draws the walls of a room. */
	public static final String ELEVATION = "wainscribe.ui.elevation.editor"; //$NON-NLS-1$

	private RoomEditors() {
	}

	/**
	 * Opens the elevations of a room, or brings them to the front.
	 *
	 * @param page     where
	 * @param room     the room
	 * @param activate whether the editor takes the keyboard
	 * @return the editor
	 * @throws PartInitException if it cannot be opened
	 */
	public static IEditorPart open(IWorkbenchPage page, RoomSession room, boolean activate) throws PartInitException {
		return page.openEditor(new FileEditorInput(room.file()), ELEVATION, activate);
	}
}
