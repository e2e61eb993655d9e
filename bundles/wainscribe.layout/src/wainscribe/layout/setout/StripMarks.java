// SPDX-License-Identifier: EPL-2.0
package wainscribe.layout.setout;

import wainscribe.layout.StripKind;
import wainscribe.layout.StripOutline;
import wainscribe.layout.Tier;
import wainscribe.model.length.Length;
import wainscribe.model.length.LengthUnit;

/**
 * The marks of one strip. It is cut to its own length, so only edges are marked.
 *
 * @param id          name of the strip
 * @param tier        the tier it stands in
 * @param kind        what it is in its pattern
 * @param left        left edge, from the wall's left end
 * @param right       right edge
 * @param bottomLeft  lower left corner, from the finished floor at the wall's left end
 * @param topLeft     upper left corner
 * @param bottomRight lower right corner; as the left one when level
 * @param topRight    upper right corner
 */
public record StripMarks(String id, Tier tier, StripKind kind, Mark left, Mark right, Mark bottomLeft, Mark topLeft,
		Mark bottomRight, Mark topRight) {

	/** Returns the marks of a strip. */
	static StripMarks of(StripOutline strip, LengthUnit units) {
		Length right = strip.y().plus(strip.rise());
		return new StripMarks(strip.id(), strip.tier(), strip.kind(), Mark.of(strip.x(), units), Mark.of(strip.right(), units),
				Mark.of(strip.y(), units), Mark.of(strip.top(), units), Mark.of(right, units),
				Mark.of(strip.top().plus(strip.riseTop()), units));
	}
}
