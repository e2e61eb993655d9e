// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.session;

import static java.util.Objects.requireNonNull;

import java.io.IOException;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;

import org.eclipse.core.resources.IContainer;
import org.eclipse.core.resources.IProject;
import org.eclipse.core.resources.IProjectDescription;
import org.eclipse.core.resources.IResource;
import org.eclipse.core.resources.IWorkspace;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.Status;
import org.eclipse.osgi.util.NLS;

import wainscribe.model.Home;
import wainscribe.model.storage.HomeFolder;

/** Makes homes and makes those that lie in a folder somewhere known to the workspace. */
public final class HomeProjects {

	private final IWorkspace workspace;

	/** Creates it for a workspace. */
	public HomeProjects(IWorkspace workspace) {
		this.workspace = requireNonNull(workspace);
	}

	/**
	 * Writes a new home and makes it a project.
	 *
	 * @param folder  where; must not exist, or be empty
	 * @param home    the home, in no resource yet
	 * @param monitor shows progress, null for none
	 * @return its project, open
	 * @throws CoreException if the folder holds something, or cannot be written; one line
	 */
	public IProject create(Path folder, Home home, IProgressMonitor monitor) throws CoreException {
		try {
			if (Files.exists(folder) && !isEmptyFolder(folder)) {
				throw new CoreException(Status.error(NLS.bind(Messages.HomeProjects_NotEmpty, folder)));
			}
			HomeFolder.create(folder, home).save();
		} catch (IOException e) {
			throw new CoreException(Status.error(e.getLocalizedMessage(), e));
		}
		return adopt(folder, monitor);
	}

	/**
	 * Makes a home that lies in a folder known to the workspace; it stays where it is. Doing so twice changes nothing.
	 *
	 * @param folder  the folder of a home
	 * @param monitor shows progress, null for none
	 * @return its project, open
	 * @throws CoreException if the folder holds no home, or cannot be read; one line
	 */
	public IProject adopt(Path folder, IProgressMonitor monitor) throws CoreException {
		Path place = folder.toAbsolutePath().normalize();
		if (!HomeFolder.isHome(place)) {
			throw new CoreException(Status.error(NLS.bind(Messages.HomeProjects_NoHome, place, HomeFolder.HOME_FILE)));
		}
		URI location = place.toUri();
		for (IContainer known : workspace.getRoot().findContainersForLocationURI(location)) {
			if (known instanceof IProject project) {
				project.open(monitor);
				project.refreshLocal(IResource.DEPTH_INFINITE, monitor);
				return project;
			}
		}
		IProject project = workspace.getRoot().getProject(freeName(place.getFileName().toString()));
		IProjectDescription description = workspace.newProjectDescription(project.getName());
		if (!workspace.getRoot().getLocation().append(project.getName()).toPath().equals(place)) {
			description.setLocationURI(location);
		}
		project.create(description, monitor);
		project.open(monitor);
		return project;
	}

	private static boolean isEmptyFolder(Path folder) throws IOException {
		if (!Files.isDirectory(folder)) {
			return false;
		}
		try (var entries = Files.list(folder)) {
			return entries.findAny().isEmpty();
		}
	}

	private String freeName(String wanted) {
		String name = wanted;
		for (int number = 2; workspace.getRoot().getProject(name).exists(); number++) {
			name = wanted + ' ' + number;
		}
		return name;
	}
}
