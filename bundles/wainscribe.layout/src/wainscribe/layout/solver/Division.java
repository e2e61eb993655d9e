// SPDX-License-Identifier: EPL-2.0
package wainscribe.layout.solver;

/**
 * How the frames of a run share its length, in units of 1/8000 mm.
 * <p>
 * Equal frames: what the division leaves over widens the first of them by one unit each. With a wide centre all other frames
 * are exactly equal, so that the run is its own mirror image, and what is left over goes to the centre.
 *
 * @param width  width of a frame before anything is added
 * @param rest   how many of the first frames are one unit wider
 * @param centre number of the frame in the centre
 * @param extra  how much wider it is
 * @param n      number of frames
 */
record Division(long width, long rest, int centre, long extra, int n) {

	/**
	 * Shares a length.
	 *
	 * @param total  the length without the gaps
	 * @param n      number of frames; odd for a wide centre
	 * @param rhythm how many widths of the other frames the one in the centre has
	 */
	static Division of(long total, int n, int rhythm) {
		if (rhythm == 1 || n == 1) {
			return new Division(total / n, total % n, 0, 0, n);
		}
		long width = total / parts(n, rhythm);
		return new Division(width, 0, n / 2, total - width * n, n);
	}

	/** Returns into how many widths n frames divide a length. */
	static int parts(int n, int rhythm) {
		return n - 1 + rhythm;
	}

	/** Returns the width of a frame. */
	long width(int i) {
		return width + (i < rest ? 1 : 0) + (i == centre ? extra : 0);
	}

	/** Returns how far the left edge of a frame lies from that of the first. */
	long left(int i, long gap) {
		return i * (width + gap) + Math.min(i, rest) + (i > centre ? extra : 0);
	}

	/** Returns the greatest width. */
	long widest() {
		return width + (rest > 0 ? 1 : 0) + extra;
	}
}
