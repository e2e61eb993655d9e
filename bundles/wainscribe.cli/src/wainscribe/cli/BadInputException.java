// SPDX-License-Identifier: EPL-2.0
package wainscribe.cli;

import java.util.Objects;

/** Input or usage that can't be worked with; ends a command with exit code 2. The message is the one line shown. */
public final class BadInputException extends Exception {

	private static final long serialVersionUID = 1L;

	/**
	 * Creates the exception.
	 *
	 * @param message one line: file, row and column, or the option and its value, and what was expected
	 */
	public BadInputException(String message) {
		super(Objects.requireNonNull(message));
	}

	/** Returns the exception for a value of an option. */
	public static BadInputException option(String option, String value, String expected) {
		return new BadInputException("option " + option + ": \"" + value + "\": expected " + expected); //$NON-NLS-1$ //$NON-NLS-2$ //$NON-NLS-3$
	}
}
