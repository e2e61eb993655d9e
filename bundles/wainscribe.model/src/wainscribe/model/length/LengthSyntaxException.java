// SPDX-License-Identifier: EPL-2.0
package wainscribe.model.length;

/** A text that is no length; the message quotes the text and says what was expected. */
public final class LengthSyntaxException extends IllegalArgumentException {

	private static final long serialVersionUID = 1L;

	/**
	 * Creates the exception.
	 *
	 * @param message one line that quotes the text
	 */
	public LengthSyntaxException(String message) {
		super(message);
	}
}
