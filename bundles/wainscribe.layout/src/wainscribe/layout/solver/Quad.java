// SPDX-License-Identifier: EPL-2.0
package wainscribe.layout.solver;

/**
 * The outer edge of a frame: plumb sides, lower and upper edge level or sloped.
 *
 * @param x       left edge
 * @param width   level width
 * @param y       lower left corner
 * @param height  left side
 * @param rise    how far the lower edge climbs to the right
 * @param riseTop how far the upper edge climbs to the right
 */
public record Quad(long x, long width, long y, long height, long rise, long riseTop) {

	/** Returns the right side. */
	public long heightRight() {
		return height + riseTop - rise;
	}

	/** Returns the smallest upright rectangle round it. */
	public Box bounds() {
		return new Box(x, y + Math.min(0, rise), x + width, y + height + Math.max(0, riseTop));
	}
}
