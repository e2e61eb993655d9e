// SPDX-License-Identifier: EPL-2.0
package wainscribe.report.files;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Collection;
import java.util.Set;
import java.util.TreeSet;

/**
 * The list that a pack keeps of its own files, a hidden file among them: by it the next pack knows what it may replace and
 * what belongs to someone else. One name a line, relative to the folder, with forward slashes, sorted.
 */
final class PackFileList {

	/** Name of the list in the folder of a pack. */
	static final String NAME = ".pack-files"; //$NON-NLS-1$

	private final Path folder;

	PackFileList(Path folder) {
		this.folder = folder;
	}

	/** Returns the files of the pack in the folder, none if there is no list. Names that lead elsewhere are left out. */
	Set<String> read() throws IOException {
		Set<String> names = new TreeSet<>();
		if (Files.isRegularFile(folder.resolve(NAME))) {
			new String(Files.readAllBytes(folder.resolve(NAME)), StandardCharsets.UTF_8).lines().filter(this::isInside)
					.forEach(names::add);
		}
		return names;
	}

	/**
	 * Writes or replaces the list.
	 *
	 * @param names the files
	 * @param draft where it is written before it is renamed; on the same volume as the folder
	 */
	void write(Collection<String> names, Path draft) throws IOException {
		Path written = draft.resolve(NAME);
		Files.writeString(written, String.join("\n", names) + '\n'); //$NON-NLS-1$
		Files.move(written, folder.resolve(NAME), StandardCopyOption.ATOMIC_MOVE);
	}

	/** Puts back what the list said; a failure of that is added to the reason. */
	void restore(Collection<String> names, Path draft, IOException reason) {
		try {
			if (names.isEmpty()) {
				Files.deleteIfExists(folder.resolve(NAME));
			} else {
				write(names, draft);
			}
		} catch (IOException e) {
			reason.addSuppressed(e);
		}
	}

	/** A list may have been edited: what it names outside the folder is none of the pack's. */
	private boolean isInside(String name) {
		try {
			Path place = folder.resolve(name);
			return place.equals(place.normalize()) && place.startsWith(folder) && !place.equals(folder)
					&& !place.equals(folder.resolve(NAME));
		} catch (InvalidPathException e) {
			return false;
		}
	}
}
