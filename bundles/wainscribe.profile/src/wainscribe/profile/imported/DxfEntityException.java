// SPDX-License-Identifier: EPL-2.0
package wainscribe.profile.imported;

/** An entity that cannot be read; the message says what was expected. */
final class DxfEntityException extends Exception {

	private static final long serialVersionUID = 1L;

	DxfEntityException(String expected) {
		super(expected);
	}
}
