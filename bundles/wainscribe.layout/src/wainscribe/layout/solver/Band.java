// SPDX-License-Identifier: EPL-2.0
package wainscribe.layout.solver;

import java.util.List;

/**
 * A tier of one wall.
 *
 * @param bottom      its lower edge
 * @param top         its upper edge
 * @param x0          left end of the part that exists (a slope may cut it off)
 * @param x1          right end, left of {@code x0} when no part exists
 * @param underWindows whether windows above it get a frame of their cased width
 * @param placed      frames placed by hand; if there are any the tier holds exactly those
 * @param part        how it belongs to a tier that it is a part of, null for a whole tier
 */
public record Band(Line bottom, Line top, long x0, long x1, boolean underWindows, List<Quad> placed, BandPart part) {

	/** Copies the list. */
	public Band {
		placed = List.copyOf(placed);
	}

	/** Creates a whole tier. */
	public Band(Line bottom, Line top, long x0, long x1, boolean underWindows, List<Quad> placed) {
		this(bottom, top, x0, x1, underWindows, placed, null);
	}

	/** Tells whether it is the part of a tier under or over an opening. */
	public boolean isPart() {
		return part != null;
	}

	/** Tells whether both edges are level. */
	public boolean isLevel() {
		return bottom.isLevel() && top.isLevel();
	}

	/** Tells whether a rectangle covers any part of the band. */
	public boolean isReachedBy(Box box) {
		long left = Math.max(box.x0(), x0);
		long right = Math.min(box.x1(), x1);
		return left < right && Math.min(bottom.at(left), bottom.at(right)) < box.y1()
				&& Math.max(top.at(left), top.at(right)) > box.y0();
	}
}
