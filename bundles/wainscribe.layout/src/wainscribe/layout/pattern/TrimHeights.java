// SPDX-License-Identifier: EPL-2.0
package wainscribe.layout.pattern;

import java.util.Objects;

import wainscribe.model.length.Length;

/**
 * The heights that run level round a room, from which a pattern takes its bands.
 *
 * @param baseTop    top of the highest base kept in the room, else of the new one, above the floor line
 * @param railBottom underside of the rail, above the floor line
 * @param railTop    top of the rail, above the floor line
 * @param crownDrop  how far the crown comes down from the ceiling line; zero for none
 */
public record TrimHeights(Length baseTop, Length railBottom, Length railTop, Length crownDrop) {

	/** Refuses nulls. */
	public TrimHeights {
		Objects.requireNonNull(baseTop);
		Objects.requireNonNull(railBottom);
		Objects.requireNonNull(railTop);
		Objects.requireNonNull(crownDrop);
	}
}
