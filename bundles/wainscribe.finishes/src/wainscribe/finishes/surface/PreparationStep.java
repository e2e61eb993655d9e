// SPDX-License-Identifier: EPL-2.0
package wainscribe.finishes.surface;

import java.util.Objects;

/**
 * One step before the first coat.
 *
 * @param kind what is done
 * @param text what is done and why, in words
 * @param hours waiting time after it
 */
public record PreparationStep(Kind kind, String text, int hours) {

	/** What is done, in the order of the work. */
	public enum Kind {
		/** The work stops until a test says it may go on. */
		STOP,
		/** A test of the old coat. */
		TEST,
		/** Washing. */
		CLEAN,
		/** Taking off what does not hold. */
		STRIP,
		/** Filling and sealing joints. */
		FILL,
		/** Dulling and smoothing. */
		SAND,
		/** A patch that is judged before the rest. */
		TEST_PATCH,
		/** The coat that binds old and new. */
		PRIME
	}

	/** Refuses nulls and negative waiting. */
	public PreparationStep {
		Objects.requireNonNull(kind);
		Objects.requireNonNull(text);
		if (hours < 0) {
			throw new IllegalArgumentException("A waiting time is not below 0"); //$NON-NLS-1$
		}
	}
}
