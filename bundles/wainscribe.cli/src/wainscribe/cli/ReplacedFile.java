// SPDX-License-Identifier: EPL-2.0
package wainscribe.cli;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.UUID;

/** Writes a file beside its place and renames it, so that a failure leaves the old one. */
final class ReplacedFile {

	private ReplacedFile() {
	}

	/** What writes the content. */
	interface Content {
		void writeTo(OutputStream out) throws IOException;
	}

	/**
	 * Writes or replaces a file.
	 *
	 * @throws BadInputException if the place is a folder or lies in none
	 */
	static void write(Path file, Content content) throws BadInputException, IOException {
		Path place = file.toAbsolutePath();
		if (Files.isDirectory(place) || !Files.isDirectory(place.getParent())) {
			throw new BadInputException(file + ": can't be written; expected a file in an existing folder"); //$NON-NLS-1$
		}
		// Not a temporary file of the system: those nobody else may read.
		Path beside = place.resolveSibling("." + place.getFileName() + '.' + UUID.randomUUID() + ".writing"); //$NON-NLS-1$ //$NON-NLS-2$
		try {
			try (OutputStream out = Files.newOutputStream(beside, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE)) {
				content.writeTo(out);
			}
			Files.move(beside, place, StandardCopyOption.REPLACE_EXISTING);
		} finally {
			Files.deleteIfExists(beside);
		}
	}
}
