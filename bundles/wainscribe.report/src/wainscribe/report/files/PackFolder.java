// SPDX-License-Identifier: EPL-2.0
package wainscribe.report.files;

import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;

/**
 * The folder of a pack. The new pack is drafted as a whole in a hidden folder of its own; only then its files take their
 * places, one rename each, and what the earlier pack had more goes. Whatever goes wrong leaves the earlier pack as it was.
 * Everything in the folder that no pack wrote stays untouched.
 */
public final class PackFolder {

	private static final String DRAFT = ".draft-"; //$NON-NLS-1$

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
	 * @throws FileAlreadyExistsException if a file is in the way that no pack wrote; its reason says what was expected
	 * @throws IOException                if the pack cannot be written
	 */
	public List<Path> replace(Part writing) throws IOException {
		Path parent = folder.getParent();
		if (parent == null) {
			throw new IOException(folder + ": expected a folder inside another"); //$NON-NLS-1$
		}
		for (Path above = folder; above != null; above = above.getParent()) {
			if (Files.exists(above) && !Files.isDirectory(above)) {
				throw new FileAlreadyExistsException(above.toString(), null, "is a file; expected a folder"); //$NON-NLS-1$
			}
		}
		Files.createDirectories(parent);
		Path draft = Files.createTempDirectory(Files.isDirectory(folder) ? folder : parent, DRAFT);
		try {
			Path pack = Files.createDirectory(draft.resolve("new")); //$NON-NLS-1$
			writing.write(pack);
			Set<String> names = names(pack);
			place(names, draft, pack);
			return names.stream().map(folder::resolve).toList();
		} finally {
			delete(draft);
		}
	}

	private void place(Set<String> names, Path draft, Path pack) throws IOException {
		if (!Files.exists(folder)) {
			new PackFileList(pack).write(names, draft);
			Files.move(pack, folder);
			return;
		}
		PackFileList list = new PackFileList(folder);
		Set<String> earlier = list.read();
		refuseForeign(names, earlier);
		Set<String> both = new TreeSet<>(earlier);
		both.addAll(names);
		Set<String> stale = new TreeSet<>(earlier);
		stale.removeAll(names);
		PackFileExchange exchange = new PackFileExchange(folder, Files.createDirectory(draft.resolve("old"))); //$NON-NLS-1$
		try {
			// Known before they are there: a crash on the way leaves no file that the next pack would take for another's.
			list.write(both, draft);
			for (String name : names) {
				exchange.put(pack.resolve(name), name);
			}
			for (String name : stale) {
				exchange.remove(name);
			}
			list.write(names, draft);
		} catch (IOException e) {
			exchange.undo(e);
			list.restore(earlier, draft, e);
			throw e;
		}
	}

	private void refuseForeign(Set<String> names, Set<String> earlier) throws IOException {
		for (String name : names) {
			Path place = folder.resolve(name);
			for (Path above = place.getParent(); !above.equals(folder); above = above.getParent()) {
				if (Files.exists(above, LinkOption.NOFOLLOW_LINKS) && !Files.isDirectory(above, LinkOption.NOFOLLOW_LINKS)) {
					throw inTheWay(above);
				}
			}
			boolean there = Files.exists(place, LinkOption.NOFOLLOW_LINKS);
			if (there && (!earlier.contains(name) || Files.isDirectory(place, LinkOption.NOFOLLOW_LINKS))) {
				throw inTheWay(place);
			}
		}
	}

	private static FileAlreadyExistsException inTheWay(Path place) {
		return new FileAlreadyExistsException(place.toString(), null,
				"is in the way and not from an earlier pack; expected another folder, or that moved away"); //$NON-NLS-1$
	}

	private static Set<String> names(Path pack) throws IOException {
		Set<String> names = new TreeSet<>();
		try (Stream<Path> files = Files.walk(pack)) {
			files.filter(Files::isRegularFile).forEach(file -> names.add(pack.relativize(file).toString().replace('\\', '/')));
		}
		return names;
	}

	private static void delete(Path tree) throws IOException {
		try (Stream<Path> paths = Files.walk(tree)) {
			for (Path path : paths.sorted(Comparator.reverseOrder()).toList()) {
				Files.delete(path);
			}
		}
	}
}
