// SPDX-License-Identifier: EPL-2.0
package wainscribe.survey.form;

import java.util.ArrayList;
import java.util.List;

/**
 * The syntax of notes: {@code key=value;key=value}, lists with {@code |}.
 * <p>
 * Names are free text, so a backslash before {@code ;}, {@code |}, {@code =} or another backslash makes it an ordinary
 * character. Any other backslash is an ordinary character itself.
 */
public final class NoteText {

	/** Between two entries. */
	public static final char ENTRY_SEPARATOR = ';';
	/** Between the parts of a list. */
	public static final char LIST_SEPARATOR = '|';
	private static final String SPECIAL = ";|=\\"; //$NON-NLS-1$

	private NoteText() {
	}

	/** Splits at a separator that no backslash makes ordinary; the backslashes stay. */
	public static List<String> split(String text, char separator) {
		List<String> parts = new ArrayList<>();
		int start = 0;
		for (int i = 0; i < text.length(); i++) {
			char c = text.charAt(i);
			if (isEscape(text, i)) {
				i++;
			} else if (c == separator) {
				parts.add(text.substring(start, i));
				start = i + 1;
			}
		}
		parts.add(text.substring(start));
		return parts;
	}

	/** Returns the text that a name had before {@link #escaped(String)}. */
	public static String plain(String text) {
		StringBuilder plain = new StringBuilder();
		for (int i = 0; i < text.length(); i++) {
			if (isEscape(text, i)) {
				i++;
			}
			plain.append(text.charAt(i));
		}
		return plain.toString();
	}

	/** Returns a name as it can stand in a note. */
	public static String escaped(String name) {
		StringBuilder escaped = new StringBuilder();
		for (char c : name.toCharArray()) {
			if (SPECIAL.indexOf(c) >= 0) {
				escaped.append('\\');
			}
			escaped.append(c);
		}
		return escaped.toString();
	}

	private static boolean isEscape(String text, int index) {
		return text.charAt(index) == '\\' && index + 1 < text.length() && SPECIAL.indexOf(text.charAt(index + 1)) >= 0;
	}
}
