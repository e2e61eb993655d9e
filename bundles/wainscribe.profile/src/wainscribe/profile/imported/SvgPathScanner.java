// SPDX-License-Identifier: EPL-2.0
package wainscribe.profile.imported;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Takes path data apart into commands, numbers and flags (SVG 1.1, 8.3.9: the grammar for path data). */
final class SvgPathScanner {

	private static final Pattern NUMBER = Pattern.compile("[+-]?(?:\\d+\\.?\\d*|\\.\\d+)(?:[eE][+-]?\\d+)?"); //$NON-NLS-1$

	private final String data;
	private int at;

	SvgPathScanner(String data) {
		this.data = data;
	}

	/** Returns how many characters are read. */
	int position() {
		return at + 1;
	}

	boolean atEnd() {
		skip(false);
		return at >= data.length();
	}

	/** Tells whether a number stands here, so that the command before is repeated. */
	boolean atNumber() {
		skip(true);
		return at < data.length() && "+-.0123456789".indexOf(data.charAt(at)) >= 0; //$NON-NLS-1$
	}

	char command() throws SvgPathException {
		skip(false);
		char found = data.charAt(at);
		if ("MmLlHhVvCcSsQqTtAaZz".indexOf(found) < 0) { //$NON-NLS-1$
			throw new SvgPathException(position(), "\"" + found + "\"; expected one of M L H V C S Q T A Z"); //$NON-NLS-1$ //$NON-NLS-2$
		}
		at++;
		return found;
	}

	double number() throws SvgPathException {
		skip(true);
		Matcher number = NUMBER.matcher(data).region(at, data.length());
		if (!number.lookingAt()) {
			throw new SvgPathException(position(), found() + "; expected a number"); //$NON-NLS-1$
		}
		at = number.end();
		return Double.parseDouble(number.group());
	}

	/** Flags are one digit and need no space behind them. */
	boolean flag() throws SvgPathException {
		skip(true);
		if (at >= data.length() || data.charAt(at) != '0' && data.charAt(at) != '1') {
			throw new SvgPathException(position(), found() + "; expected a flag, 0 or 1"); //$NON-NLS-1$
		}
		return data.charAt(at++) == '1';
	}

	private String found() {
		return at < data.length() ? "\"" + data.charAt(at) + "\"" : "the end"; //$NON-NLS-1$ //$NON-NLS-2$ //$NON-NLS-3$
	}

	private void skip(boolean commas) {
		while (at < data.length() && (Character.isWhitespace(data.charAt(at)) || commas && data.charAt(at) == ',')) {
			at++;
		}
	}
}
