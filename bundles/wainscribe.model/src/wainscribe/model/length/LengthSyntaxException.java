// SPDX-License-Identifier: EPL-2.0
package wainscribe.model.length;

/** A text that is no length; the message quotes the text and says what was expected. */
public final class LengthSyntaxException extends IllegalArgumentException {

	private static final long serialVersionUID = 1L;

	private final String reason;

	/**
	 * Creates the exception.
	 *
	 * @param quoted the text in quotes, on one line
	 * @param reason what is wrong with it and what was expected
	 */
	public LengthSyntaxException(String quoted, String reason) {
		super(quoted + ": " + reason); //$NON-NLS-1$
		this.reason = reason;
	}

	/** Returns what is wrong with the text and what was expected, without the text. */
	public String reason() {
		return reason;
	}
}
