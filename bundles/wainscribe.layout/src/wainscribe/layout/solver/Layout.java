// SPDX-License-Identifier: EPL-2.0
package wainscribe.layout.solver;

import java.util.List;

/**
 * An answer to a layout problem.
 *
 * @param gap    its gap
 * @param gapY   its vertical gap
 * @param rows   its rows of fields; 1 but for a grid of strips
 * @param window place of its module; the same for the same layout, only {@link Expectation} reads it
 * @param score  its terms
 * @param walls  for each wall its tiers, in the order of the task
 */
public record Layout(long gap, long gapY, int rows, long window, Score score, List<List<Filled>> walls) {

	/**
	 * What is in one tier of a wall.
	 *
	 * @param band    the part of the tier that is framed
	 * @param runs    the runs from left to right, anchors among them
	 * @param bays    the bays, also those given up
	 * @param lost    window anchors given up
	 */
	public record Filled(Band band, List<Run> runs, List<Bay> bays, List<Lost> lost) {
	}

	/**
	 * A window anchor that was given up.
	 *
	 * @param x0    left end of the cased width
	 * @param x1    right end
	 * @param legal whether it could have been, at the price of something that counts more
	 */
	public record Lost(long x0, long x1, boolean legal) {
	}

	/**
	 * A run.
	 *
	 * @param x0        left end
	 * @param x1        right end
	 * @param anchor    whether it is a window anchor; then its ends are the frame's own
	 * @param frameable whether it is long enough for a frame
	 * @param count     number of its frames, or of the fields between its strips; 0 when it stays plain
	 * @param frames    its frames, or its upright strips
	 * @param rails     its level strips
	 * @param leftSplit  number of the island that was made a barrier at its left end, -1 for none
	 * @param rightSplit the same at its right end
	 */
	public record Run(long x0, long x1, boolean anchor, boolean frameable, int count, List<Quad> frames,
			List<Quad> rails, int leftSplit, int rightSplit) {
	}
}
