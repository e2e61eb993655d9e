// SPDX-License-Identifier: EPL-2.0
package wainscribe.survey.form;

/** A text that is not what a cell or note key takes; the message says what was expected, without the text. */
public final class ValueException extends Exception {

	private static final long serialVersionUID = 1L;

	/**
	 * Creates the exception.
	 *
	 * @param reason what was expected
	 */
	public ValueException(String reason) {
		super(reason);
	}
}
