// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.export;

import static java.util.Objects.requireNonNull;

import java.lang.reflect.InvocationTargetException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

import org.eclipse.core.runtime.OperationCanceledException;
import org.eclipse.core.runtime.Platform;
import org.eclipse.jface.wizard.Wizard;
import org.eclipse.swt.program.Program;

import wainscribe.report.DesignServices;
import wainscribe.ui.session.HomeSession;
import wainscribe.ui.session.RoomSession;

/** Writes the client pack of one room or of a whole home, as it is on the screen, saved or not. */
public final class ExportPackWizard extends Wizard {

	private static final String FIRST_PAGE = "pack.html"; //$NON-NLS-1$

	private final HomeSession home;
	private final ExportPackPage page;
	private List<Path> written = List.of();

	/**
	 * Creates the wizard.
	 *
	 * @param home the home
	 * @param room the room proposed; null for the whole home
	 */
	public ExportPackWizard(HomeSession home, RoomSession room) {
		this.home = requireNonNull(home);
		this.page = new ExportPackPage(home, room);
		setWindowTitle(Messages.ExportPackWizard_Title);
		setNeedsProgressMonitor(true);
	}

	@Override
	public void addPages() {
		addPage(page);
	}

	@Override
	public boolean performFinish() {
		PackExport export = new PackExport(DesignServices.from(Platform.getExtensionRegistry()), home.home(),
			page.rooms().stream().map(RoomSession::room).toList(), page.folder());
		try {
			getContainer().run(true, true, export);
		} catch (InvocationTargetException e) {
			page.setErrorMessage(e.getCause().getLocalizedMessage());
			return false;
		} catch (InterruptedException | OperationCanceledException e) {
			page.setErrorMessage(Messages.ExportPackWizard_Stopped);
			return false;
		}
		written = export.written();
		if (page.opensWhenDone()) {
			firstPage().ifPresent(file -> Program.launch(file.toString()));
		}
		return true;
	}

	/** Returns where the pack begins; empty before the wizard was finished. */
	public Optional<Path> firstPage() {
		return written.stream().filter(file -> file.getFileName().toString().equals(FIRST_PAGE)).findFirst();
	}
}
