// SPDX-License-Identifier: EPL-2.0
package wainscribe.drawing;

/**
 * A point of a drawing, millimetres on the wall: x to the right, y up. Drawings are only painted, so floating point is
 * good enough here.
 *
 * @param x from the datum to the right
 * @param y from the finished floor up
 */
public record Point(double x, double y) {

	/** Returns the point moved by a distance. */
	public Point plus(double dx, double dy) {
		return new Point(x + dx, y + dy);
	}

	/** Returns the distance to another point. */
	public double distance(Point other) {
		return Math.hypot(other.x - x, other.y - y);
	}
}
