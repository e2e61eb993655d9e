// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.profile.sheet;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Objects;
import java.util.UUID;

import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.program.Program;
import org.eclipse.swt.widgets.FileDialog;
import org.eclipse.swt.widgets.Shell;

import wainscribe.drawing.pdf.ProfileSheet;
import wainscribe.model.storage.FileNames;
import wainscribe.ui.profile.Messages;
import wainscribe.ui.profile.session.ProfileSession;

/** Saves the section as a sheet at 1:1, as it is drawn now, and opens it. */
public final class SaveSheet {

	private static final String EXTENSION = ".pdf"; //$NON-NLS-1$

	private final Shell shell;
	private final ProfileSession session;

	/**
	 * Creates the task.
	 *
	 * @param shell   dialogs lie over it
	 * @param session the profile
	 */
	public SaveSheet(Shell shell, ProfileSession session) {
		this.shell = Objects.requireNonNull(shell);
		this.session = Objects.requireNonNull(session);
	}

	/** Asks where to, writes and opens the sheet. */
	public void run() {
		FileDialog dialog = new FileDialog(shell, SWT.SAVE);
		dialog.setText(Messages.SaveSheet_Title);
		dialog.setFilterExtensions('*' + EXTENSION);
		dialog.setFileName(FileNames.stem(session.draft().data().name(), "profile") + EXTENSION); //$NON-NLS-1$
		dialog.setOverwrite(true);
		String chosen = dialog.open();
		if (chosen == null) {
			return;
		}
		Path file = Path.of(chosen.endsWith(EXTENSION) ? chosen : chosen + EXTENSION);
		try {
			write(file);
			Program.launch(file.toString());
		} catch (IOException e) {
			MessageDialog.openError(shell, Messages.SaveSheet_Title, NLS.bind(Messages.SaveSheet_NotWritten, file, e.getLocalizedMessage()));
		}
	}

	/**
	 * Writes the sheet beside its place and then renames it.
	 *
	 * @throws IOException if it cannot be written; an old file is then untouched
	 */
	public void write(Path file) throws IOException {
		Path beside = file.toAbsolutePath().resolveSibling("." + UUID.randomUUID() + EXTENSION); //$NON-NLS-1$
		try {
			try (OutputStream out = Files.newOutputStream(beside)) {
				new ProfileSheet(session.units()).write(session.draft().profile(), out);
			}
			Files.move(beside, file, StandardCopyOption.REPLACE_EXISTING);
		} finally {
			Files.deleteIfExists(beside);
		}
	}
}
