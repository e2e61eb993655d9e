// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.newhome;

import static java.util.Objects.requireNonNull;

import java.lang.reflect.InvocationTargetException;
import java.nio.file.Path;
import java.util.Optional;

import org.eclipse.core.resources.IProject;
import org.eclipse.core.resources.IWorkspace;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.jface.wizard.Wizard;

import wainscribe.model.Home;
import wainscribe.ui.session.HomeProjects;

/** Makes a new home: a folder, which is a project of the workspace. */
public final class NewHomeWizard extends Wizard {

	private final IWorkspace workspace;
	private final NewHomePage page;
	private IProject project;
	private boolean wantsRooms;

	/**
	 * Creates the wizard.
	 *
	 * @param workspace that the home becomes a project of
	 */
	public NewHomeWizard(IWorkspace workspace) {
		this.workspace = requireNonNull(workspace);
		this.page = new NewHomePage(workspace.getRoot().getLocation().toPath());
		setWindowTitle(Messages.NewHomeWizard_Title);
		setNeedsProgressMonitor(true);
	}

	@Override
	public void addPages() {
		addPage(page);
	}

	@Override
	public boolean performFinish() {
		Path folder = page.folder();
		Home home = page.home();
		wantsRooms = page.wantsRooms();
		try {
			getContainer().run(true, false, monitor -> {
				try {
					project = new HomeProjects(workspace).create(folder, home, monitor);
				} catch (CoreException e) {
					throw new InvocationTargetException(e, e.getStatus().getMessage());
				}
			});
			return true;
		} catch (InvocationTargetException e) {
			page.setErrorMessage(e.getMessage());
		} catch (InterruptedException e) {
			Thread.currentThread().interrupt();
		}
		return false;
	}

	/** Returns the project that was made; empty before the wizard was finished. */
	public Optional<IProject> project() {
		return Optional.ofNullable(project);
	}

	/** Tells whether the rooms are to be added next. */
	public boolean wantsRooms() {
		return wantsRooms;
	}
}
