// SPDX-License-Identifier: EPL-2.0
package wainscribe.report.files;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.Collections;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import java.util.zip.ZipOutputStream;

/**
 * Takes the time of writing out of a spreadsheet, so that equal content gives equal bytes: the times of the parts in its
 * archive, and when it says that it was created (ECMA-376, part 2, core properties).
 */
final class TimelessZip {

	/** The earliest time an archive can tell. */
	private static final LocalDateTime BEGINNING = LocalDateTime.of(1980, 1, 1, 0, 0);
	private static final String CORE_PROPERTIES = "docProps/core.xml"; //$NON-NLS-1$
	private static final String CREATED = "(?<begin><dcterms:(?:created|modified)[^>]*>)[^<]*"; //$NON-NLS-1$
	private static final String CREATED_THEN = "1980-01-01T00:00:00Z"; //$NON-NLS-1$

	private TimelessZip() {
	}

	/**
	 * Copies an archive.
	 *
	 * @param archive a file
	 * @param copy    a file that does not exist yet
	 * @throws IOException if one cannot be read or the other written
	 */
	static void copy(Path archive, Path copy) throws IOException {
		// Read by its directory: parts written in one go do not tell their size at their beginning.
		try (ZipFile from = new ZipFile(archive.toFile());
				ZipOutputStream to = new ZipOutputStream(Files.newOutputStream(copy))) {
			for (ZipEntry entry : Collections.list(from.entries())) {
				ZipEntry part = new ZipEntry(entry.getName());
				part.setTimeLocal(BEGINNING);
				to.putNextEntry(part);
				to.write(timeless(entry.getName(), from.getInputStream(entry).readAllBytes()));
				to.closeEntry();
			}
		}
	}

	private static byte[] timeless(String name, byte[] part) {
		if (!name.equals(CORE_PROPERTIES)) {
			return part;
		}
		return new String(part, StandardCharsets.UTF_8).replaceAll(CREATED, "${begin}" + CREATED_THEN) //$NON-NLS-1$
				.getBytes(StandardCharsets.UTF_8);
	}
}
