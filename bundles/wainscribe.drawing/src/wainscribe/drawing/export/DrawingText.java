// SPDX-License-Identifier: EPL-2.0
package wainscribe.drawing.export;

/** Makes any text fit for a file. */
public final class DrawingText {

	/** Shown for a character that cannot be written. */
	public static final int REPLACEMENT = 0xFFFD;

	private static final int FIRST_PRINTABLE = 0x20;
	private static final int DELETE = 0x7f;
	private static final int FIRST_LATIN = 0xa0;

	private DrawingText() {
	}

	/**
	 * Returns a text without what XML 1.0 and plain text files cannot hold: line breaks and tabs become spaces, control
	 * characters, halves of surrogate pairs and non-characters a replacement mark.
	 */
	public static String clean(String text) {
		StringBuilder clean = new StringBuilder(text.length());
		text.codePoints().map(DrawingText::clean).forEach(clean::appendCodePoint);
		return clean.toString();
	}

	private static int clean(int character) {
		if (character == '\n' || character == '\r' || character == '\t') {
			return ' ';
		}
		boolean control = character < FIRST_PRINTABLE || character >= DELETE && character < FIRST_LATIN;
		boolean half = character >= Character.MIN_SURROGATE && character <= Character.MAX_SURROGATE;
		boolean none = (character & 0xfffe) == 0xfffe;
		return control || half || none ? REPLACEMENT : character;
	}

	/** Returns a text with the characters that mean something in XML written as entities; cleaned as well. */
	public static String xml(String text) {
		return clean(text).replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;").replace("\"", "&quot;") //$NON-NLS-1$ //$NON-NLS-2$ //$NON-NLS-3$ //$NON-NLS-4$ //$NON-NLS-5$ //$NON-NLS-6$ //$NON-NLS-7$ //$NON-NLS-8$
				.replace("'", "&#39;"); //$NON-NLS-1$ //$NON-NLS-2$
	}
}
