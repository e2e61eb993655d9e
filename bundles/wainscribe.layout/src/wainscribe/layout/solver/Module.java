// SPDX-License-Identifier: EPL-2.0
package wainscribe.layout.solver;

import java.util.Arrays;
import java.util.stream.LongStream;

/**
 * The module: a window of widths 25 mm wide that reads as one width.
 * <p>
 * Widths are quotients; to add their distances exactly they are kept in 1/720720 of a unit, which is whole for up to 16
 * parts of a run, and below a millionth of a unit off for more. The number of runs inside a window, and the sum of
 * distances to it, can only change direction where an end of the window meets a width, so windows that begin or end at a
 * width are all that need trying.
 */
final class Module {

	private static final long FINE = 720_720;
	private static final long WINDOW = 25L * 8000 * FINE;
	private static final long TENTH = 800 * FINE;

	private Module() {
	}

	/** Returns one of the equal parts of a length. */
	static long width(long total, int parts) {
		return Math.multiplyExact(total, FINE) / parts;
	}

	/** Returns a width in whole units, rounded down. */
	static long units(long width) {
		return width / FINE;
	}

	/** Returns the lower ends of the windows worth trying, ascending. */
	static long[] windows(LongStream widths) {
		long[] distinct = widths.flatMap(width -> LongStream.of(width, width - WINDOW)).sorted().distinct().toArray();
		return distinct.length == 0 ? new long[1] : distinct;
	}

	/** Returns the window with a width in its middle. */
	static long around(long width) {
		return Math.multiplyExact(width, FINE) - WINDOW / 2;
	}

	/** Returns how many widths lie outside a window. */
	static long outside(long[] widths, long window) {
		return Arrays.stream(widths).filter(width -> distance(width, window) > 0).count();
	}

	/** Returns how far a width lies from a window. */
	static long distance(long width, long window) {
		return width < window ? window - width : Math.max(0, width - window - WINDOW);
	}

	/** Rounds a sum of distances once to 0.1 mm, halves up. */
	static long tenths(long excess) {
		return (excess + TENTH / 2) / TENTH;
	}
}
