// SPDX-License-Identifier: EPL-2.0
package wainscribe.rules;

import java.util.Locale;

/** How far the figures of a rule were confirmed. */
public enum SourceStatus {
	/** Read in a public copy of the source, or of a page that restates it. */
	VERIFIED,
	/** Not confirmed by reading. */
	FROM_MEMORY,
	/** Plain trade practice without a published source; an editable default. */
	COMMON_PRACTICE;

	/** Returns the words shown: {@code verified}, {@code from memory}, {@code common practice}. */
	public String word() {
		return name().toLowerCase(Locale.ROOT).replace('_', ' ');
	}

	/**
	 * Finds a status by its words.
	 *
	 * @throws IllegalArgumentException if there is none of those words
	 */
	public static SourceStatus ofWord(String word) {
		for (SourceStatus status : values()) {
			if (status.word().equals(word)) {
				return status;
			}
		}
		throw new IllegalArgumentException("status \"" + word + "\": expected verified, from memory or common practice"); //$NON-NLS-1$ //$NON-NLS-2$
	}
}
