// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.properties;

/** Free text, one line. */
public final class PlainText implements ValueText<String> {

	@Override
	public String shown(String value) {
		return value;
	}

	@Override
	public String read(String text) {
		return text.strip();
	}
}
