// SPDX-License-Identifier: EPL-2.0
package wainscribe.takeoff;

import java.util.HashSet;
import java.util.Locale;
import java.util.Set;

/**
 * Makes names of rooms into names of sheets: at most 31 characters, none of {@code []:*?/\}, no apostrophe at either end,
 * each once whatever its case (Office Open XML, as spreadsheets enforce it).
 */
final class SheetNames {

	private static final int LONGEST = 31;

	private final Set<String> taken = new HashSet<>();

	/** Returns a sheet name that was not given before. */
	String of(String name) {
		String clean = name.replaceAll("[\\[\\]:*?/\\\\\\p{Cntrl}]", " ").replaceAll("^'+|'+$", "").strip(); //$NON-NLS-1$ //$NON-NLS-2$ //$NON-NLS-3$ //$NON-NLS-4$
		String stem = clean.isEmpty() ? "-" : clean; //$NON-NLS-1$
		String candidate = cut(stem, LONGEST);
		for (int i = 2; !taken.add(candidate.toLowerCase(Locale.ROOT)); i++) {
			String suffix = " (" + i + ')'; //$NON-NLS-1$
			candidate = cut(stem, LONGEST - suffix.length()) + suffix;
		}
		return candidate;
	}

	/** Cuts to a number of UTF-16 units without parting a pair. */
	private static String cut(String text, int length) {
		if (text.length() <= length) {
			return text;
		}
		int end = Character.isHighSurrogate(text.charAt(length - 1)) ? length - 1 : length;
		return text.substring(0, end).strip();
	}
}
