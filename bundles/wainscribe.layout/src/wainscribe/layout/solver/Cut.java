// SPDX-License-Identifier: EPL-2.0
package wainscribe.layout.solver;

/**
 * Where a run of a tier ends and the next begins.
 *
 * @param x0      right end of the run before
 * @param x1      left end of the run after
 * @param kind    why
 * @param element number of the island of a split, else -1
 * @param near    near distances of an anchor
 */
record Cut(long x0, long x1, Kind kind, int element, int near) {

	/** Why a tier is cut. */
	enum Kind {
		/** An end of the tier, or barriers: no choice. */
		BLOCKED,
		/** A frame of the cased width under a window: may be given up. */
		ANCHOR,
		/** An island made a barrier: may be chosen. */
		SPLIT
	}

	boolean isBlocked() {
		return kind == Kind.BLOCKED;
	}

	boolean isAnchor() {
		return kind == Kind.ANCHOR;
	}

	boolean isSplit() {
		return kind == Kind.SPLIT;
	}
}
