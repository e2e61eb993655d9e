// SPDX-License-Identifier: EPL-2.0
package wainscribe.layout.solver;

/**
 * An upright rectangle in units of 1/8000 mm.
 *
 * @param x0 left edge
 * @param y0 lower edge
 * @param x1 right edge
 * @param y1 upper edge
 */
public record Box(long x0, long y0, long x1, long y1) {

	/** Returns the rectangle grown on all sides. */
	public Box grown(long margin) {
		return new Box(x0 - margin, y0 - margin, x1 + margin, y1 + margin);
	}

	/** Tells whether the insides overlap. */
	public boolean overlaps(Box other) {
		return x0 < other.x1 && other.x0 < x1 && y0 < other.y1 && other.y0 < y1;
	}
}
