// SPDX-License-Identifier: EPL-2.0
package wainscribe.drawing.dxf;

import wainscribe.drawing.export.DrawingText;

/** Writes text so that a DXF reader shows it as it is: only ASCII, other characters as {@code \U+xxxx}. */
final class DxfText {

	private static final int LAST_ASCII = 0x7e;
	private static final int LAST_BASIC = 0xffff;

	private DxfText() {
	}

	static String of(String text) {
		StringBuilder written = new StringBuilder();
		int[] characters = DrawingText.clean(text).codePoints().toArray();
		for (int i = 0; i < characters.length; i++) {
			boolean pair = characters[i] == '%' && i + 1 < characters.length && characters[i + 1] == '%';
			if (pair) {
				// Two per cent signs begin a control code; three are one sign.
				written.append("%%%");
			} else {
				append(written, characters[i]);
			}
		}
		return written.toString();
	}

	private static void append(StringBuilder written, int character) {
		if (character == '^') {
			written.append("^ ");
		} else if (character == '\\' || character > LAST_ASCII) {
			written.append(String.format("\\U+%04X", character > LAST_BASIC ? DrawingText.REPLACEMENT : character));
		} else {
			written.append((char) character);
		}
	}
}
