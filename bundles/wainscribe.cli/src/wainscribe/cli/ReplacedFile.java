// SPDX-License-Identifier: EPL-2.0
package wainscribe.cli;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;

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
		Path beside = Files.createTempFile(place.getParent(), "." + place.getFileName(), ".writing"); //$NON-NLS-1$ //$NON-NLS-2$
		try {
			try (OutputStream out = Files.newOutputStream(beside)) {
				content.writeTo(out);
			}
			Files.move(beside, place, StandardCopyOption.REPLACE_EXISTING);
		} finally {
			Files.deleteIfExists(beside);
		}
	}
}
