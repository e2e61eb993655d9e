// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.profile.files;

import java.io.IOException;
import java.util.Objects;

import org.eclipse.core.resources.IFile;
import org.eclipse.core.resources.IResource;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.QualifiedName;
import org.eclipse.core.runtime.Status;
import org.eclipse.osgi.util.NLS;

import wainscribe.profile.file.ProfileFile;
import wainscribe.ui.profile.Messages;
import wainscribe.ui.profile.backdrop.Backdrop;
import wainscribe.ui.profile.session.ProfileDraft;
import wainscribe.ui.profile.session.ProfileSession;
import wainscribe.ui.session.HomeSession;
import wainscribe.ui.session.HomeSessions;

/**
 * A profile file of a home while it is edited. The picture behind the section is a note of the workspace, not part of the
 * profile.
 */
public final class OpenProfile {

	private static final QualifiedName BACKDROP = new QualifiedName("wainscribe.ui.profile", "backdrop"); //$NON-NLS-1$ //$NON-NLS-2$

	private final IFile file;
	private final HomeSessions homes;
	private final HomeSession home;
	private final ProfileSession session;

	private OpenProfile(IFile file, HomeSessions homes, HomeSession home, ProfileSession session) {
		this.file = Objects.requireNonNull(file);
		this.homes = Objects.requireNonNull(homes);
		this.home = Objects.requireNonNull(home);
		this.session = Objects.requireNonNull(session);
	}

	/**
	 * Opens a file.
	 *
	 * @param file  a profile file in a home's project
	 * @param homes where homes are opened
	 * @throws CoreException if the home or the file cannot be read
	 */
	public static OpenProfile of(IFile file, HomeSessions homes) throws CoreException {
		HomeSession home = homes.openHome(file.getProject());
		try {
			ProfileDraft draft = ProfileDraft.of(new ProfileFile(file.getLocation().toPath()).readAsDrawn());
			Backdrop backdrop = Backdrop.read(file.getPersistentProperty(BACKDROP)).orElse(null);
			return new OpenProfile(file, homes, home, new ProfileSession(draft, backdrop, home.units()));
		} catch (IOException e) {
			homes.close(home);
			throw new CoreException(Status.error(e.getLocalizedMessage(), e));
		} catch (CoreException e) {
			homes.close(home);
			throw e;
		}
	}

	/** Returns the session of the profile. */
	public ProfileSession session() {
		return session;
	}

	/**
	 * Writes the profile beside the old file and then in its place.
	 *
	 * @throws CoreException if it cannot be written, or its section has a fault: the file then keeps the last sound section
	 */
	public void save(IProgressMonitor monitor) throws CoreException {
		if (!session.faults().isEmpty()) {
			throw new CoreException(Status.error(NLS.bind(Messages.OpenProfile_NotSound, session.faults().getFirst().sentence())));
		}
		try {
			new ProfileFile(file.getLocation().toPath()).write(session.draft().profile());
		} catch (IOException e) {
			throw new CoreException(Status.error(e.getLocalizedMessage(), e));
		}
		file.refreshLocal(IResource.DEPTH_ZERO, monitor);
		file.setPersistentProperty(BACKDROP, session.backdrop().map(Backdrop::text).orElse(null));
		session.saved();
	}

	/** Gives the home back. */
	public void close() {
		homes.close(home);
	}
}
