// SPDX-License-Identifier: EPL-2.0
package wainscribe.survey;

import java.util.Objects;

/**
 * What an import changed in a home.
 *
 * @param kind    what happened
 * @param room    name of the room; empty for the home itself
 * @param element path of names under the room, such as {@code A / window by the stove}; empty for the room itself
 */
public record SurveyChange(Kind kind, String room, String element) {

	/** What happened to an element. */
	public enum Kind {
		/** It is new. */
		ADDED,
		/** Some of its numbers or words are others. */
		CHANGED,
		/** The survey no longer has it. */
		REMOVED
	}

	/** Refuses nulls. */
	public SurveyChange {
		Objects.requireNonNull(kind);
		Objects.requireNonNull(room);
		Objects.requireNonNull(element);
	}
}
