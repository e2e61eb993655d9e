// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.profile.newprofile;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Objects;

import org.eclipse.core.resources.IFile;
import org.eclipse.core.resources.IProject;
import org.eclipse.core.resources.IResource;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.jface.wizard.Wizard;

import wainscribe.model.storage.FileNames;
import wainscribe.profile.TrimProfile;
import wainscribe.profile.file.HomeProfiles;
import wainscribe.profile.file.ProfileFile;
import wainscribe.ui.profile.Messages;
import wainscribe.ui.session.HomeSession;
import wainscribe.ui.session.HomeSessions;

/** Makes a profile of a home from a classical shape and its size. */
public final class NewProfileWizard extends Wizard {

	private final HomeSessions sessions;
	private final NewProfilePage page;
	private IFile file;

	/**
	 * Creates the wizard.
	 *
	 * @param sessions the homes of the workspace
	 * @param home     the home proposed; null if there is none
	 */
	public NewProfileWizard(HomeSessions sessions, IProject home) {
		this.sessions = Objects.requireNonNull(sessions);
		page = new NewProfilePage(sessions, home);
		setWindowTitle(Messages.NewProfileWizard_Title);
	}

	@Override
	public void addPages() {
		addPage(page);
	}

	/** Returns the file that was made; null before the wizard is finished. */
	public IFile file() {
		return file;
	}

	@Override
	public boolean performFinish() {
		try {
			file = make(page.home(), page.profile());
			return true;
		} catch (IOException e) {
			page.refuse(e.getLocalizedMessage());
		} catch (CoreException e) {
			page.refuse(e.getStatus().getMessage());
		}
		return false;
	}

	private IFile make(IProject project, TrimProfile shaped) throws IOException, CoreException {
		HomeSession home = sessions.openHome(project);
		try {
			String stem = FileNames.stem(shaped.name(), "profile"); //$NON-NLS-1$
			String id = FileNames.unique(stem, name -> home.profiles().find(name).isPresent() || exists(project, name));
			Path path = HomeProfiles.fileFor(project.getLocation().toPath(), id);
			new ProfileFile(path).write(new TrimProfile(id, shaped.name(), shaped.uses(),
					shaped.section()));
			project.getFolder(HomeProfiles.FOLDER).refreshLocal(IResource.DEPTH_ONE, null);
			return project.getFolder(HomeProfiles.FOLDER).getFile(path.getFileName().toString());
		} finally {
			sessions.close(home);
		}
	}

	private static boolean exists(IProject project, String name) {
		return project.getFolder(HomeProfiles.FOLDER).getFile(name + '.' + ProfileFile.EXTENSION).exists();
	}
}
