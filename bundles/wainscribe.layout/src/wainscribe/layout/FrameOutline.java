// SPDX-License-Identifier: EPL-2.0
package wainscribe.layout;

import java.util.Objects;

import wainscribe.model.length.Length;

/**
 * The outer edge of a frame's moulding in the elevation of its wall.
 *
 * @param id      name on drawings and cut lists, unique in the room and the same for the same layout
 * @param tier    the tier it stands in
 * @param role    why it is there
 * @param x       left edge, from the wall's left end
 * @param y       lower left corner, from the finished floor at the wall's left end
 * @param width   measured level
 * @param height  left edge, measured plumb
 * @param rise    how far the lower edge climbs to the right; zero when level
 * @param riseTop how far the upper edge climbs to the right; zero when level
 */
public record FrameOutline(String id, Tier tier, FrameRole role, Length x, Length y, Length width, Length height,
		Length rise, Length riseTop) implements Member {

	/** Refuses nulls. */
	public FrameOutline {
		Objects.requireNonNull(id);
		Objects.requireNonNull(tier);
		Objects.requireNonNull(role);
		Objects.requireNonNull(x);
		Objects.requireNonNull(y);
		Objects.requireNonNull(width);
		Objects.requireNonNull(height);
		Objects.requireNonNull(rise);
		Objects.requireNonNull(riseTop);
	}
}
