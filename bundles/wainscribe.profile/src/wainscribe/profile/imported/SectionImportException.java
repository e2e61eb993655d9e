// SPDX-License-Identifier: EPL-2.0
package wainscribe.profile.imported;

import java.io.IOException;
import java.nio.file.Path;

/** A drawing from which no section can be read; the message is one line: file, place where known, what was expected. */
public final class SectionImportException extends IOException {

	private static final long serialVersionUID = 1L;

	/** Creates the exception for a file as a whole. */
	public SectionImportException(Path file, String expected) {
		this(file, expected, null);
	}

	/** Creates the exception for a row of a file, the first is 1. */
	public SectionImportException(Path file, int row, String expected) {
		this(file, row, expected, null);
	}

	SectionImportException(Path file, int row, String expected, Throwable cause) {
		super(file + ", row " + row + ": " + oneLine(expected), cause); //$NON-NLS-1$ //$NON-NLS-2$
	}

	SectionImportException(Path file, String expected, Throwable cause) {
		super(file + ": " + oneLine(expected), cause); //$NON-NLS-1$
	}

	private static String oneLine(String text) {
		return text.replaceAll("\\s+", " ").strip(); //$NON-NLS-1$ //$NON-NLS-2$
	}
}
