// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.session;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

import org.eclipse.core.resources.IFile;
import org.eclipse.core.resources.IFolder;
import org.eclipse.core.resources.IResource;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.ILog;

import wainscribe.model.storage.HomeFileException;
import wainscribe.profile.TrimProfile;
import wainscribe.profile.file.HomeProfiles;
import wainscribe.profile.file.ProfileFile;

/**
 * The profiles that lie in a home, as they were read last.
 *
 * @param files  all files, with what was read
 * @param sound  those that can be chosen
 */
record ProfileShelf(List<HomeProfile> files, List<TrimProfile> sound) {

	/** Copies the lists. */
	ProfileShelf {
		files = List.copyOf(files);
		sound = List.copyOf(sound);
	}

	/** Reads the profiles of a home; one that takes the id of a registered profile cannot be chosen. */
	static ProfileShelf read(HomeSession home, RoomStudy study) {
		Path folder = home.project().getLocation().toPath();
		HomeProfiles read = HomeProfiles.read(folder, study.profiles());
		List<HomeProfile> files = new ArrayList<>();
		for (IFile file : files(home)) {
			String problem = read.problems().stream().filter(line -> line.contains(file.getName())).findFirst().orElse(""); //$NON-NLS-1$
			files.add(new HomeProfile(home, file, asDrawn(file), problem));
		}
		return new ProfileShelf(files, read.profiles());
	}

	/** Tells whether the same can be chosen, and the same files are there. */
	boolean isLike(ProfileShelf other) {
		return sound.equals(other.sound) && files.equals(other.files)
			&& files.stream().map(HomeProfile::profile).toList().equals(other.files.stream().map(HomeProfile::profile).toList());
	}

	private static TrimProfile asDrawn(IFile file) {
		try {
			return new ProfileFile(file.getLocation().toPath()).readAsDrawn();
		} catch (HomeFileException e) {
			// the fault says why
			return null;
		}
	}

	private static List<IFile> files(HomeSession home) {
		IFolder folder = home.project().getFolder(HomeProfiles.FOLDER);
		List<IFile> files = new ArrayList<>();
		try {
			if (folder.exists()) {
				for (IResource member : folder.members()) {
					if (member instanceof IFile file && ProfileFile.EXTENSION.equals(file.getFileExtension())
						&& !file.getName().startsWith(".")) { //$NON-NLS-1$
						files.add(file);
					}
				}
			}
		} catch (CoreException e) {
			ILog.get().log(e.getStatus());
		}
		return files;
	}
}
