// SPDX-License-Identifier: EPL-2.0
package wainscribe.rules;

import java.util.Locale;

/** How much a finding weighs; the heaviest comes first. */
public enum Severity {
	/** Breaks a published figure, cannot be built, or is a safety stop. */
	ERROR,
	/** A likely defect; keeping it needs a reason. */
	WARNING,
	/** A guideline. */
	ADVICE;

	/** Returns the word used in files and messages: {@code error}, {@code warning}, {@code advice}. */
	public String word() {
		return name().toLowerCase(Locale.ROOT);
	}

	/**
	 * Finds a severity by its word.
	 *
	 * @throws IllegalArgumentException if there is none of that word
	 */
	public static Severity ofWord(String word) {
		for (Severity severity : values()) {
			if (severity.word().equals(word)) {
				return severity;
			}
		}
		throw new IllegalArgumentException("severity \"" + word + "\": expected error, warning or advice"); //$NON-NLS-1$ //$NON-NLS-2$
	}
}
