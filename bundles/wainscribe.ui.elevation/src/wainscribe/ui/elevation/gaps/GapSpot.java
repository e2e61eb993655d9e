// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.elevation.gaps;

import java.util.Objects;

import wainscribe.model.Wall;
import wainscribe.model.length.Length;
import wainscribe.model.outline.Outline;

/**
 * A gap that can be taken hold of. All gaps of a room in one direction are the same; dragging one sets them all.
 *
 * @param wall    the wall
 * @param upright true: above or below frames; false: beside them
 * @param area    the gap, between frames or between a frame and what bounds its run
 * @param frames  which of its sides are frames
 */
public record GapSpot(Wall wall, boolean upright, Outline area, Frames frames) {

	/** Which sides of a gap are edges of frames. */
	public enum Frames {
		/** The left or lower side. */
		LOW,
		/** The right or upper side. */
		HIGH,
		/** Both sides. */
		BOTH
	}

	/** Refuses nulls. */
	public GapSpot {
		Objects.requireNonNull(wall);
		Objects.requireNonNull(area);
		Objects.requireNonNull(frames);
	}

	/** Tells whether a point of the elevation lies in it. */
	public boolean contains(Length x, Length y) {
		return !x.isLessThan(area.x0()) && !x.isMoreThan(area.x1()) && !y.isLessThan(area.y0()) && !y.isMoreThan(area.y1());
	}

	/**
	 * Tells whether the edge that follows the pointer is the right or upper one: between frames the nearer one.
	 *
	 * @param at where it is taken hold of, along the gap's own direction
	 */
	public boolean followsHigh(Length at) {
		Length low = upright ? area.y0() : area.x0();
		Length high = upright ? area.y1() : area.x1();
		return frames == Frames.HIGH || frames == Frames.BOTH && !at.minus(low).isLessThan(high.minus(at));
	}

	/** Returns the edge that follows the pointer when the gap is another and its other edge stays: an outline without width. */
	public Outline edge(Length gap, boolean high) {
		if (upright) {
			Length y = high ? area.y0().plus(gap) : area.y1().minus(gap);
			return new Outline(area.x0(), y, area.x1(), y);
		}
		Length x = high ? area.x0().plus(gap) : area.x1().minus(gap);
		return new Outline(x, area.y0(), x, area.y1());
	}
}
