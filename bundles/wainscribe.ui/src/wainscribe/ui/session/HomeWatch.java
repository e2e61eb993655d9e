// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.session;

import java.util.LinkedHashSet;
import java.util.Set;
import java.util.function.Consumer;

import org.eclipse.core.resources.IProject;
import org.eclipse.core.resources.IResource;
import org.eclipse.core.resources.IResourceChangeEvent;
import org.eclipse.core.resources.IResourceChangeListener;
import org.eclipse.core.resources.IResourceDelta;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.ILog;
import org.eclipse.swt.widgets.Display;

import wainscribe.model.storage.HomeFolder;
import wainscribe.profile.file.ProfileFile;

/** Notices when homes come and go in the workspace, and when their files are written. */
final class HomeWatch implements IResourceChangeListener {

	private static final String HOME_EXTENSION = "home"; //$NON-NLS-1$

	private final Display display;
	private final Runnable homesChanged;
	private final Consumer<IProject> filesChanged;

	/**
	 * Creates a watch.
	 *
	 * @param display      in whose thread the news is told
	 * @param homesChanged projects or home files were added or removed
	 * @param filesChanged files of this home were written
	 */
	HomeWatch(Display display, Runnable homesChanged, Consumer<IProject> filesChanged) {
		this.display = display;
		this.homesChanged = homesChanged;
		this.filesChanged = filesChanged;
	}

	@Override
	public void resourceChanged(IResourceChangeEvent event) {
		Set<IProject> written = new LinkedHashSet<>();
		boolean[] comeOrGone = { false };
		try {
			event.getDelta().accept(delta -> {
				IResource resource = delta.getResource();
				boolean appears = delta.getKind() != IResourceDelta.CHANGED || (delta.getFlags() & IResourceDelta.OPEN) != 0;
				if (resource.getType() == IResource.PROJECT && appears) {
					comeOrGone[0] = true;
				}
				if (resource.getType() == IResource.FILE && isOfHome(resource) && isContent(delta)) {
					written.add(resource.getProject());
					comeOrGone[0] |= appears;
				}
				return true;
			});
		} catch (CoreException e) {
			ILog.get().log(e.getStatus());
		}
		if (display.isDisposed() || written.isEmpty() && !comeOrGone[0]) {
			return;
		}
		display.asyncExec(() -> {
			written.forEach(filesChanged);
			if (comeOrGone[0]) {
				homesChanged.run();
			}
		});
	}

	private static boolean isContent(IResourceDelta delta) {
		return delta.getKind() != IResourceDelta.CHANGED || (delta.getFlags() & IResourceDelta.CONTENT) != 0;
	}

	private static boolean isOfHome(IResource resource) {
		String extension = resource.getFileExtension();
		return HOME_EXTENSION.equals(extension) || HomeFolder.ROOM_EXTENSION.equals(extension)
			|| ProfileFile.EXTENSION.equals(extension);
	}
}
