// SPDX-License-Identifier: EPL-2.0
package wainscribe.layout.solver;

import java.util.List;

/**
 * What may fill the runs of a tier at one gap: frames, or plain strips.
 * <p>
 * Numbers are those of the parts that share a run's length: of frames, or of the clear fields between strips.
 */
interface RunFit {

	/** Answer of {@link #near} for what may not be. */
	int ILLEGAL = -1;

	/** Returns the shortest run between two ends that takes anything. */
	long shortest(long x0, long x1);

	/** Returns the least number of parts. */
	int fewest(long x0, long x1);

	/** Returns the greatest number of parts whose width is not under the least; 0 if the run is too short. */
	int most(long x0, long x1);

	/** Returns by how much the numbers that a run may take differ. */
	default int step() {
		return 1;
	}

	/** Returns the width, finer than units, by which n parts of a run count for the module, see {@link Module}. */
	long moduleWidth(long x0, long x1, int n);

	/**
	 * Counts near distances of n parts in a run.
	 *
	 * @return the count, or {@link #ILLEGAL}
	 */
	int near(long x0, long x1, int n);

	/** Tells whether n parts of a run leave the band of usual, or the wished, widths. */
	boolean isOutOfBand(long x0, long x1, int n);

	/** Tells whether n parts of a run would need pieces longer than can be had. */
	boolean isTooLong(long x0, long x1, int n);

	/** Returns the islands that bar n parts in a run. */
	List<Island> barring(long x0, long x1, int n);

	/** Returns the islands that n parts of a run would come near to. */
	List<Island> nearTo(long x0, long x1, int n);

	/** Returns what is put up for n parts: the frames, or the upright strips, from left to right. */
	List<Quad> members(long x0, long x1, int n);

	/** Returns the level strips between them, each row from left to right; none for frames. */
	default List<Quad> rails(long x0, long x1, int n) {
		return List.of();
	}

	/** Tells whether a run is long enough for anything. */
	default boolean isFrameable(long x0, long x1) {
		return x1 - x0 >= shortest(x0, x1);
	}

	/** Tells whether a run takes one number only. */
	default boolean isPier(long x0, long x1) {
		return isFrameable(x0, x1) && most(x0, x1) == fewest(x0, x1);
	}
}
