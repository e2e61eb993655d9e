// SPDX-License-Identifier: EPL-2.0
package wainscribe.layout.solver;

/**
 * Something that cuts a tier: a cased opening, a large fixture, or the clearance that a combustible moulding keeps.
 *
 * @param outline what it covers
 * @param sides   distance a moulding keeps at its sides beyond the outline; the gap counts towards it
 * @param below   the same below; the vertical gap counts towards it
 * @param above   the same above
 * @param kind    what it is
 * @param element number of the surveyed element on the wall
 */
public record Barrier(Box outline, long sides, long below, long above, Kind kind, int element) {

	/** What cuts. */
	public enum Kind {
		/** A window with its casing. */
		WINDOW,
		/** A door with its casing. */
		DOOR,
		/** Anything else. */
		FIXTURE
	}

	/** Returns what stays free of runs at the given gaps, so that the gap beyond it completes the clearance. */
	public Box blocked(long gap, long gapY) {
		long side = Math.max(0, sides - gap);
		return new Box(outline.x0() - side, outline.y0() - Math.max(0, below - gapY), outline.x1() + side,
				outline.y1() + Math.max(0, above - gapY));
	}

	/** Tells whether it is a cased opening. */
	public boolean isOpening() {
		return kind != Kind.FIXTURE;
	}
}
