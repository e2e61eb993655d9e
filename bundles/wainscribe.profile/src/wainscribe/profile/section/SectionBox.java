// SPDX-License-Identifier: EPL-2.0
package wainscribe.profile.section;

import java.util.Objects;

import wainscribe.model.length.Length;

/**
 * The smallest rectangle around a section, to the nearest exact unit.
 *
 * @param low  least x and y
 * @param high greatest x and y
 */
public record SectionBox(SectionPoint low, SectionPoint high) {

	/** Refuses nulls. */
	public SectionBox {
		Objects.requireNonNull(low);
		Objects.requireNonNull(high);
	}

	/** Returns the extent along the wall: the face width. */
	public Length width() {
		return high.x().minus(low.x());
	}

	/** Returns the extent away from the wall: the projection. */
	public Length projection() {
		return high.y().minus(low.y());
	}
}
