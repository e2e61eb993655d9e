// SPDX-License-Identifier: EPL-2.0
package wainscribe.survey;

import java.util.regex.Pattern;

/** Texts of a survey as messages show them: quoted, on one line, and never longer than a line can be read. */
public final class QuotedText {

	private static final int LONGEST = 60;
	/** Control, format and line-separating characters: what could break or disguise a message. */
	private static final Pattern UNPRINTABLE = Pattern.compile("[\\p{Cc}\\p{Zl}\\p{Zp}\\u202a-\\u202e\\u2066-\\u2069\\ufffe\\uffff]"); //$NON-NLS-1$

	private QuotedText() {
	}

	/** Returns the text in double quotes, shortened and with unprintable characters shown as a replacement mark. */
	public static String of(String text) {
		String shown = text;
		if (text.codePointCount(0, text.length()) > LONGEST) {
			shown = text.substring(0, text.offsetByCodePoints(0, LONGEST)) + "..."; //$NON-NLS-1$
		}
		return '"' + UNPRINTABLE.matcher(shown).replaceAll("\ufffd") + '"'; //$NON-NLS-1$
	}

	/** Returns the text with unprintable characters replaced, so that it stays on one line. */
	public static String onOneLine(String text) {
		return UNPRINTABLE.matcher(text).replaceAll("\ufffd"); //$NON-NLS-1$
	}
}
