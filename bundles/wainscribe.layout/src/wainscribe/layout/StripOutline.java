// SPDX-License-Identifier: EPL-2.0
package wainscribe.layout;

import java.util.Objects;

import wainscribe.model.length.Length;

/**
 * A plain strip of moulding with butt ends, as it is seen in the elevation of its wall.
 *
 * @param id      name on drawings and cut lists, unique in the room and the same for the same layout
 * @param tier    the tier it stands in
 * @param kind    what it is in its pattern
 * @param x       left edge, from the wall's left end
 * @param y       lower left corner, from the finished floor at the wall's left end
 * @param width   measured level
 * @param height  left edge, measured plumb
 * @param rise    how far the lower edge climbs to the right; zero when level
 * @param riseTop how far the upper edge climbs to the right; zero when level
 */
public record StripOutline(String id, Tier tier, StripKind kind, Length x, Length y, Length width, Length height,
		Length rise, Length riseTop) implements Member {

	/** Refuses nulls. */
	public StripOutline {
		Objects.requireNonNull(id);
		Objects.requireNonNull(tier);
		Objects.requireNonNull(kind);
		Objects.requireNonNull(x);
		Objects.requireNonNull(y);
		Objects.requireNonNull(width);
		Objects.requireNonNull(height);
		Objects.requireNonNull(rise);
		Objects.requireNonNull(riseTop);
	}
}
