// SPDX-License-Identifier: EPL-2.0
package wainscribe.layout.solver;

/**
 * The six counting terms of a layout in one number, so that adding and comparing layouts is adding and comparing numbers:
 * plain, splits, anchors dropped, near, out of band, off module, the first in the highest bits.
 * <p>
 * Each term has room for more than a room can hold (511 stretches, splits and anchors, 4095 near distances, 1023 runs).
 */
public final class Rank {

	/** Runs, barriers and islands in all tiers together up to which no term can outgrow its bits. */
	static final int MOST_THINGS = 500;
	static final long OFF_MODULE = 1;
	static final long OUT_OF_BAND = 1L << 10;
	static final long NEAR = 1L << 20;
	static final long ANCHOR = 1L << 32;
	static final long SPLIT = 1L << 41;
	static final long PLAIN = 1L << 50;
	/** Above every rank, also when another is added. */
	static final long NONE = Long.MAX_VALUE / 4;

	private static final int SMALL = 0x1ff;
	private static final int MIDDLE = 0x3ff;
	private static final int LARGE = 0xfff;

	private Rank() {
	}

	/** Returns the frameable stretches without a frame. */
	public static int plain(long rank) {
		return (int) (rank >> 50) & SMALL;
	}

	/** Returns the islands made barriers. */
	public static int splits(long rank) {
		return (int) (rank >> 41) & SMALL;
	}

	/** Returns the anchors and bays given up. */
	public static int anchorsDropped(long rank) {
		return (int) (rank >> 32) & SMALL;
	}

	/** Returns the near distances. */
	public static int near(long rank) {
		return (int) (rank >> 20) & LARGE;
	}

	/** Returns the runs out of their band. */
	public static int outOfBand(long rank) {
		return (int) (rank >> 10) & MIDDLE;
	}

	/** Returns the runs outside the module. */
	public static int offModule(long rank) {
		return (int) rank & MIDDLE;
	}
}
