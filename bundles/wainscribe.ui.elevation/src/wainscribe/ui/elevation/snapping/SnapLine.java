// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.elevation.snapping;

import java.util.Objects;

import wainscribe.model.length.Length;

/**
 * A line of the elevation that edges and axes like to be on.
 *
 * @param at   distance from the wall's left end, or height from the finished floor
 * @param name what it belongs to, as shown beside the pointer; empty when it needs no word
 */
public record SnapLine(Length at, String name) {

	/** Refuses nulls. */
	public SnapLine {
		Objects.requireNonNull(at);
		Objects.requireNonNull(name);
	}
}
