// SPDX-License-Identifier: EPL-2.0
package wainscribe.profile.file;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

import wainscribe.model.storage.FileNames;
import wainscribe.model.storage.HomeFileException;
import wainscribe.profile.ProfileCatalogue;
import wainscribe.profile.TrimProfile;

/**
 * The profiles that lie as files in the folder {@code profiles} of a home, in the order of their file names. Immutable; what
 * could not be used is said in {@link #problems()}.
 *
 * @param profiles sound profiles, each id once
 * @param problems one line for each file that was left out
 */
public record HomeProfiles(List<TrimProfile> profiles, List<String> problems) {

	/** Name of the folder in a home. */
	public static final String FOLDER = "profiles"; //$NON-NLS-1$

	/** Copies the lists. */
	public HomeProfiles {
		profiles = List.copyOf(profiles);
		problems = List.copyOf(problems);
	}

	/**
	 * Reads the profiles of a home.
	 *
	 * @param home      folder of the home; it need not have profiles
	 * @param catalogue what was registered; a file may not take one of its ids
	 * @return what could be read and what could not
	 */
	public static HomeProfiles read(Path home, ProfileCatalogue catalogue) {
		Map<String, Path> taken = new LinkedHashMap<>();
		List<TrimProfile> profiles = new ArrayList<>();
		List<String> problems = new ArrayList<>();
		try {
			for (Path file : files(home.resolve(FOLDER))) {
				TrimProfile profile = read(file, problems);
				if (profile != null && isFree(profile.id(), file, taken, catalogue, problems)) {
					taken.put(profile.id(), file);
					profiles.add(profile);
				}
			}
		} catch (IOException e) {
			problems.add(home.resolve(FOLDER) + ": can't be read (" + e.getMessage() + "); expected a folder of profiles"); //$NON-NLS-1$ //$NON-NLS-2$
		}
		return new HomeProfiles(profiles, problems);
	}

	private static TrimProfile read(Path file, List<String> problems) {
		try {
			return new ProfileFile(file).read();
		} catch (HomeFileException e) {
			problems.add(e.getMessage());
			return null;
		}
	}

	private static boolean isFree(String id, Path file, Map<String, Path> taken, ProfileCatalogue catalogue, List<String> problems) {
		String by = taken.containsKey(id) ? taken.get(id).getFileName().toString()
			: catalogue.find(id).map(other -> "the catalogue's " + other.name()).orElse(null); //$NON-NLS-1$
		if (by != null) {
			problems.add(file + ": the id " + id + " is taken by " + by + "; expected an id of its own"); //$NON-NLS-1$ //$NON-NLS-2$ //$NON-NLS-3$
		}
		return by == null;
	}

	private static List<Path> files(Path folder) throws IOException {
		if (!Files.isDirectory(folder)) {
			return List.of();
		}
		try (Stream<Path> all = Files.list(folder)) {
			return all.filter(file -> file.getFileName().toString().endsWith('.' + ProfileFile.EXTENSION)
					&& !file.getFileName().toString().startsWith(".") && Files.isRegularFile(file)).sorted().toList(); //$NON-NLS-1$
		}
	}

	/** Returns the file in which a profile of a home is kept when it is first saved: named after its id. */
	public static Path fileFor(Path home, String id) {
		Path folder = home.resolve(FOLDER);
		String name = FileNames.unique(FileNames.stem(id, "profile"), stem -> Files.exists(folder.resolve(stem + '.' + ProfileFile.EXTENSION))); //$NON-NLS-1$
		return folder.resolve(name + '.' + ProfileFile.EXTENSION);
	}

	/** Returns the catalogue with the profiles of the home before its own. */
	public ProfileCatalogue over(ProfileCatalogue catalogue) {
		return catalogue.with(profiles);
	}
}
