// SPDX-License-Identifier: EPL-2.0
package wainscribe.layout.pattern;

/**
 * How the widths of the frames in one run go together.
 * <p>
 * With a wide centre a run takes an odd number of frames: one in its middle, and as many on either side that are all equal.
 * A run of one frame has the wide one alone. Gaps are equal whatever the rhythm is.
 *
 * @param centre how many widths of the others the frame in the centre has; 1 makes all frames equal
 */
public record Rhythm(int centre) {

	/** All frames of a run are equal. */
	public static final Rhythm EQUAL = new Rhythm(1);

	/** Narrow, wide, narrow: the frame in the centre is twice as wide as the others. */
	public static final Rhythm DOUBLE_CENTRE = new Rhythm(2);

	private static final int WIDEST = 8;

	/**
	 * Refuses proportions that no run could show.
	 *
	 * @throws IllegalArgumentException if {@code centre} is not from 1 to 8
	 */
	public Rhythm {
		if (centre < 1 || centre > WIDEST) {
			throw new IllegalArgumentException("centre " + centre + ": expected 1 to " + WIDEST); //$NON-NLS-1$ //$NON-NLS-2$
		}
	}
}
