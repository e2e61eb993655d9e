// SPDX-License-Identifier: EPL-2.0
package wainscribe.survey.closure;

import java.util.Objects;

/**
 * A measurement that should be taken again.
 *
 * @param wall    name of the wall; empty for the whole room
 * @param element name of the thing on it; empty for the wall itself
 * @param message why, in words
 * @param isAboutAngle whether the angle at the right end of the wall is in doubt and not its length
 */
public record Doubt(String wall, String element, String message, boolean isAboutAngle) {

	/** Refuses nulls. */
	public Doubt {
		Objects.requireNonNull(wall);
		Objects.requireNonNull(element);
		Objects.requireNonNull(message);
	}
}
