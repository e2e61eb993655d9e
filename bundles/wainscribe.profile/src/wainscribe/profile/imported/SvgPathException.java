// SPDX-License-Identifier: EPL-2.0
package wainscribe.profile.imported;

/** Path data that cannot be read; the message names the character and what was expected. */
final class SvgPathException extends Exception {

	private static final long serialVersionUID = 1L;

	SvgPathException(int character, String expected) {
		super("path, character " + character + ": " + expected); //$NON-NLS-1$ //$NON-NLS-2$
	}
}
