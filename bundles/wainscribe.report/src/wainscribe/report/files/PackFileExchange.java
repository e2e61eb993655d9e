// SPDX-License-Identifier: EPL-2.0
package wainscribe.report.files;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.stream.Stream;

/** Puts the files of a new pack in the places of the earlier one, each by one rename, and can take all of it back. */
final class PackFileExchange {

	private final Path folder;
	private final Path kept;
	private final Deque<String> changed = new ArrayDeque<>();

	/**
	 * Starts an exchange.
	 *
	 * @param folder the folder of the pack
	 * @param kept   an empty folder on the same volume, which holds the earlier files meanwhile
	 */
	PackFileExchange(Path folder, Path kept) {
		this.folder = folder;
		this.kept = kept;
	}

	/** Puts a file in its place, where the earlier one is until the very moment. */
	void put(Path file, String name) throws IOException {
		Path place = folder.resolve(name);
		Files.createDirectories(place.getParent());
		keep(name);
		Files.move(file, place, StandardCopyOption.ATOMIC_MOVE);
	}

	/** Removes a file of the earlier pack, and its folder if nothing else is in it. */
	void remove(String name) throws IOException {
		Path place = folder.resolve(name);
		if (!Files.exists(place, LinkOption.NOFOLLOW_LINKS) || Files.isDirectory(place, LinkOption.NOFOLLOW_LINKS)) {
			return;
		}
		keep(name);
		Files.delete(place);
		for (Path above = place.getParent(); !above.equals(folder) && isEmpty(above); above = above.getParent()) {
			Files.delete(above);
		}
	}

	/** Takes everything back; what can't be taken back is added to the reason. */
	void undo(IOException reason) {
		while (!changed.isEmpty()) {
			String name = changed.pop();
			Path place = folder.resolve(name);
			try {
				if (Files.exists(kept.resolve(name), LinkOption.NOFOLLOW_LINKS)) {
					Files.createDirectories(place.getParent());
					Files.move(kept.resolve(name), place, StandardCopyOption.ATOMIC_MOVE);
				} else {
					Files.deleteIfExists(place);
				}
			} catch (IOException e) {
				reason.addSuppressed(e);
			}
		}
	}

	private void keep(String name) throws IOException {
		Path place = folder.resolve(name);
		if (Files.exists(place, LinkOption.NOFOLLOW_LINKS)) {
			Path copy = kept.resolve(name);
			Files.createDirectories(copy.getParent());
			Files.copy(place, copy, LinkOption.NOFOLLOW_LINKS, StandardCopyOption.COPY_ATTRIBUTES);
		}
		changed.push(name);
	}

	private static boolean isEmpty(Path directory) throws IOException {
		try (Stream<Path> files = Files.list(directory)) {
			return files.findAny().isEmpty();
		}
	}
}
