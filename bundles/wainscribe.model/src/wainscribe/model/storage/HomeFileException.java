// SPDX-License-Identifier: EPL-2.0
package wainscribe.model.storage;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Objects;

/** A file of a home that can't be read; the message is one line: file, row and column where known, what was expected. */
public final class HomeFileException extends IOException {

	private static final long serialVersionUID = 1L;

	/**
	 * Creates the exception for a file as a whole.
	 *
	 * @param file     the file
	 * @param expected what was found and what was expected, one line
	 */
	public HomeFileException(Path file, String expected) {
		super(file + ": " + oneLine(expected)); //$NON-NLS-1$
	}

	/**
	 * Creates the exception for a place in a file.
	 *
	 * @param file     the file
	 * @param row      physical line, the first is 1
	 * @param column   character in the line, the first is 1
	 * @param expected what was found and what was expected, one line
	 * @param cause    what the reader met
	 */
	public HomeFileException(Path file, int row, int column, String expected, Throwable cause) {
		super(file + ", row " + row + ", column " + column + ": " + oneLine(expected), Objects.requireNonNull(cause)); //$NON-NLS-1$ //$NON-NLS-2$ //$NON-NLS-3$
	}

	private static String oneLine(String text) {
		return text.replaceAll("\\s+", " ").strip(); //$NON-NLS-1$ //$NON-NLS-2$
	}
}
