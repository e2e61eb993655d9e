// SPDX-License-Identifier: EPL-2.0
package wainscribe.layout.pattern;

/** A contributed pattern that cannot be used; the message names extension point and contributor. */
public final class PatternException extends RuntimeException {

	private static final long serialVersionUID = 1L;

	/**
	 * Creates the exception.
	 *
	 * @param message one line for a log or an error message
	 * @param cause   what went wrong, or null
	 */
	public PatternException(String message, Throwable cause) {
		super(message, cause);
	}
}
