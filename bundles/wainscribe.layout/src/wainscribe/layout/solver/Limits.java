// SPDX-License-Identifier: EPL-2.0
package wainscribe.layout.solver;

/**
 * Sizes that hold for all frames of a room, in units of 1/8000 mm.
 *
 * @param face       face width of the frame moulding
 * @param least      least width and height of a frame
 * @param longest    longest side that can be had in one piece, or {@link #UNLIMITED}
 * @param widthLeast least width wished, or negative when the band of proportions holds
 * @param widthMost  greatest width wished, or negative when none was stated
 * @param rhythm     how many widths of the other frames of a run the one in its centre has; 1 for equal frames
 */
public record Limits(long face, long least, long longest, long widthLeast, long widthMost, int rhythm) {

	/** Longest side where none is known; small enough to be multiplied by any number of frames. */
	public static final long UNLIMITED = Long.MAX_VALUE / 65_536;

	/** Tells whether a width was wished for, which replaces the band of proportions. */
	public boolean hasWidthWish() {
		return widthLeast >= 0 || widthMost >= 0;
	}
}
