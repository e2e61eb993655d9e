// SPDX-License-Identifier: EPL-2.0
package wainscribe.app.home;

import static java.util.Objects.requireNonNull;

import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

import org.eclipse.core.resources.IContainer;
import org.eclipse.core.resources.IProject;
import org.eclipse.core.resources.IProjectDescription;
import org.eclipse.core.resources.IResource;
import org.eclipse.core.resources.IWorkspace;
import org.eclipse.core.resources.IWorkspaceRunnable;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.IProgressMonitor;

/**
 * Makes homes that already lie in a folder somewhere known to the workspace, where they stay: nothing is copied.
 *
 * <p>Adopting a home twice changes nothing.
 */
public final class HomeAdoption implements IWorkspaceRunnable {

	private final IWorkspace workspace;
	private final List<Path> homes;

	/**
	 * Prepares the adoption.
	 *
	 * @param workspace that shall know the homes
	 * @param homes     their folders; those that do not exist are passed over
	 */
	public HomeAdoption(IWorkspace workspace, List<Path> homes) {
		this.workspace = requireNonNull(workspace);
		this.homes = List.copyOf(homes);
	}

	@Override
	public void run(IProgressMonitor monitor) throws CoreException {
		for (Path home : homes) {
			if (Files.isDirectory(home)) {
				adopt(home);
			}
		}
	}

	private void adopt(Path home) throws CoreException {
		URI location = home.toUri();
		for (IContainer known : workspace.getRoot().findContainersForLocationURI(location)) {
			if (known instanceof IProject project) {
				project.open(null);
				project.refreshLocal(IResource.DEPTH_INFINITE, null);
				return;
			}
		}
		IProject project = workspace.getRoot().getProject(freeName(home.getFileName().toString()));
		IProjectDescription description = workspace.newProjectDescription(project.getName());
		if (!insideWorkspace(home, project)) {
			description.setLocationURI(location);
		}
		project.create(description, null);
		project.open(null);
	}

	/** A folder directly in the workspace must be left to the default place, or the workspace refuses it. */
	private boolean insideWorkspace(Path home, IProject project) {
		return workspace.getRoot().getLocation().append(project.getName()).toPath().equals(home);
	}

	private String freeName(String wanted) {
		String name = wanted;
		for (int i = 2; workspace.getRoot().getProject(name).exists(); i++) {
			name = wanted + ' ' + i;
		}
		return name;
	}
}
