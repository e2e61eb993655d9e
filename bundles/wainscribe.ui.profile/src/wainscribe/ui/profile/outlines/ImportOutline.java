// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.profile.outlines;

import java.nio.file.Path;
import java.util.Objects;

import org.eclipse.jface.window.Window;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.FileDialog;
import org.eclipse.swt.widgets.Shell;

import wainscribe.profile.section.ProfileSection;
import wainscribe.ui.profile.Messages;
import wainscribe.ui.profile.session.ProfileSession;

/** Takes the outline of a section from an SVG or DXF file, in place of what is drawn; a step that can be undone. */
public final class ImportOutline {

	private final Shell shell;
	private final ProfileSession session;

	/**
	 * Creates the task.
	 *
	 * @param shell   dialogs lie over it
	 * @param session the profile
	 */
	public ImportOutline(Shell shell, ProfileSession session) {
		this.shell = Objects.requireNonNull(shell);
		this.session = Objects.requireNonNull(session);
	}

	/** Asks for the file and its unit. */
	public void run() {
		FileDialog dialog = new FileDialog(shell, SWT.OPEN);
		dialog.setText(Messages.ImportOutline_Title);
		dialog.setFilterExtensions("*.svg;*.dxf;*.SVG;*.DXF"); //$NON-NLS-1$
		String chosen = dialog.open();
		if (chosen != null) {
			OutlineDialog question = new OutlineDialog(shell, Path.of(chosen), session.units());
			if (question.open() == Window.OK) {
				take(question.section());
			}
		}
	}

	/** Draws the section that was read. */
	public void take(ProfileSection section) {
		session.execute(session.drawing(Messages.ImportOutline_Step, section));
	}
}
