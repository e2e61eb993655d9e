// SPDX-License-Identifier: EPL-2.0
package wainscribe.layout.setout;

import wainscribe.layout.FrameOutline;
import wainscribe.model.length.LengthUnit;

/**
 * The marks of one frame: the outer edge of its moulding.
 *
 * @param id          name of the frame
 * @param left        left edge, from the wall's left end
 * @param right       right edge
 * @param bottomLeft  lower left corner, from the finished floor at the wall's left end
 * @param topLeft     upper left corner
 * @param bottomRight lower right corner; as the left one when level
 * @param topRight    upper right corner
 */
public record FrameMarks(String id, Mark left, Mark right, Mark bottomLeft, Mark topLeft, Mark bottomRight, Mark topRight) {

	/** Returns the marks of a frame. */
	static FrameMarks of(FrameOutline frame, LengthUnit units) {
		return new FrameMarks(frame.id(), Mark.of(frame.x(), units), Mark.of(frame.right(), units), Mark.of(frame.y(), units),
				Mark.of(frame.top(), units), Mark.of(frame.y().plus(frame.rise()), units),
				Mark.of(frame.top().plus(frame.riseTop()), units));
	}
}
