// SPDX-License-Identifier: EPL-2.0
package wainscribe.layout.solver;

import java.util.Comparator;

/**
 * The nine terms of a layout; less is better.
 *
 * @param rank     the six counting terms, see {@link Rank}
 * @param tenths   sum of the distances to the module in 0.1 mm, rounded once
 * @param frames   frames in the room
 * @param gapShift distance of the gap from the default, in units of 1/8000 mm
 */
public record Score(long rank, long tenths, int frames, long gapShift) implements Comparable<Score> {

	private static final Comparator<Score> ORDER = Comparator.comparingLong(Score::rank).thenComparingLong(Score::tenths)
			.thenComparingInt(Score::frames).thenComparingLong(Score::gapShift);

	@Override
	public int compareTo(Score other) {
		return ORDER.compare(this, other);
	}
}
