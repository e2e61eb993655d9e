// SPDX-License-Identifier: EPL-2.0
package wainscribe.report.files;

import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/**
 * The folder of a pack, replaced as a whole: the new pack is written into a hidden folder beside it, then the two change
 * places and the old one goes. Whatever goes wrong before that leaves the old pack as it was.
 */
public final class PackFolder {

	private static final String DRAFT = ".draft-"; //$NON-NLS-1$
	private static final String OLD = ".old-"; //$NON-NLS-1$
	/** By this file a folder is known to be a pack. */
	private static final String PAGE = "pack.html"; //$NON-NLS-1$

	private final Path folder;

	/** Creates the keeper of a folder. */
	public PackFolder(Path folder) {
		this.folder = folder.toAbsolutePath().normalize();
	}

	/** Writes a part of a pack. */
	@FunctionalInterface
	public interface Part {
		/**
		 * Writes into a draft.
		 *
		 * @param draft the folder in which the pack grows
		 * @throws IOException if it cannot be written
		 */
		void write(Path draft) throws IOException;
	}

	/**
	 * Replaces the pack.
	 *
	 * @param writing writes all of it
	 * @return its files, in the order of their names
	 * @throws IOException if it cannot be written, or if the folder holds something that is no pack
	 */
	public List<Path> replace(Part writing) throws IOException {
		refuseForeign();
		Path parent = folder.getParent();
		if (parent == null) {
			throw new IOException(folder + ": expected a folder inside another"); //$NON-NLS-1$
		}
		Files.createDirectories(parent);
		Path draft = Files.createTempDirectory(parent, DRAFT);
		try {
			writing.write(draft);
			openToAll(draft);
			change(draft, parent);
		} finally {
			delete(draft);
		}
		try (Stream<Path> files = Files.walk(folder)) {
			return files.filter(Files::isRegularFile).sorted().toList();
		}
	}

	private void refuseForeign() throws IOException {
		if (Files.exists(folder) && !Files.isDirectory(folder)) {
			throw new FileAlreadyExistsException(folder.toString(), null, "expected a folder for the pack, found a file"); //$NON-NLS-1$
		}
		if (Files.isDirectory(folder) && !Files.exists(folder.resolve(PAGE))) {
			try (Stream<Path> files = Files.list(folder)) {
				if (files.findAny().isPresent()) {
					throw new FileAlreadyExistsException(folder.toString(), null,
							"expected an empty folder or an earlier pack"); //$NON-NLS-1$
				}
			}
		}
	}

	/** A temporary folder is closed to others; a pack is to be read by those who may read its place. */
	private void openToAll(Path draft) {
		draft.toFile().setReadable(true, false);
		draft.toFile().setExecutable(true, false);
	}

	private void change(Path draft, Path parent) throws IOException {
		if (!Files.exists(folder)) {
			Files.move(draft, folder);
			return;
		}
		Path old = Files.createTempDirectory(parent, OLD);
		Path kept = old.resolve("pack"); //$NON-NLS-1$
		Files.move(folder, kept);
		try {
			Files.move(draft, folder);
		} catch (IOException e) {
			Files.move(kept, folder);
			Files.delete(old);
			throw e;
		}
		delete(old);
	}

	private static void delete(Path tree) throws IOException {
		if (!Files.exists(tree)) {
			return;
		}
		try (Stream<Path> paths = Files.walk(tree)) {
			for (Path path : paths.sorted(Comparator.reverseOrder()).toList()) {
				Files.delete(path);
			}
		}
	}
}
