// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui;

import org.eclipse.core.resources.IFile;
import org.eclipse.ui.IEditorPart;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.part.FileEditorInput;

/** Opens profiles of a home in the editor that draws their sections. */
public final class ProfileEditors {

	/** Id of the editor that draws the section of a profile. */
	public static final String SECTION = "wainscribe.ui.profile.editor"; //$NON-NLS-1$

	private ProfileEditors() {
	}

	/**
	 * Opens a profile, or brings it to the front.
	 *
	 * @param page where
	 * @param file the profile's file
	 * @return the editor
	 * @throws PartInitException if it cannot be opened
	 */
	public static IEditorPart open(IWorkbenchPage page, IFile file) throws PartInitException {
		return page.openEditor(new FileEditorInput(file), SECTION);
	}
}
