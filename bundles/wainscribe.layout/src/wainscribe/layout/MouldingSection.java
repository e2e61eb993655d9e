// SPDX-License-Identifier: EPL-2.0
package wainscribe.layout;

import java.util.Objects;

import wainscribe.model.length.Length;

/**
 * What the layout has to know of a moulding.
 *
 * @param id        id of the trim profile, or empty when only its measures were given
 * @param face      face width on the wall
 * @param thickness projection from the wall
 */
public record MouldingSection(String id, Length face, Length thickness) {

	/** Refuses nulls. */
	public MouldingSection {
		Objects.requireNonNull(id);
		Objects.requireNonNull(face);
		Objects.requireNonNull(thickness);
	}
}
