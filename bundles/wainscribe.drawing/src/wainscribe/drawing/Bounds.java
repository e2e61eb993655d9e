// SPDX-License-Identifier: EPL-2.0
package wainscribe.drawing;

import java.util.Collection;

/**
 * An upright rectangle of a drawing, millimetres.
 *
 * @param x0 left
 * @param y0 bottom
 * @param x1 right, not left of {@code x0}
 * @param y1 top, not below {@code y0}
 */
public record Bounds(double x0, double y0, double x1, double y1) {

	/** Refuses edges in the wrong order. */
	public Bounds {
		if (x1 < x0 || y1 < y0) {
			throw new IllegalArgumentException("edges in the wrong order: " + x0 + ", " + y0 + ", " + x1 + ", " + y1);
		}
	}

	/**
	 * Returns the smallest bounds round some points.
	 *
	 * @param points at least one
	 */
	public static Bounds around(Collection<Point> points) {
		double left = Double.POSITIVE_INFINITY;
		double bottom = Double.POSITIVE_INFINITY;
		double right = Double.NEGATIVE_INFINITY;
		double top = Double.NEGATIVE_INFINITY;
		for (Point point : points) {
			left = Math.min(left, point.x());
			bottom = Math.min(bottom, point.y());
			right = Math.max(right, point.x());
			top = Math.max(top, point.y());
		}
		return new Bounds(left, bottom, right, top);
	}

	/** Returns the width. */
	public double width() {
		return x1 - x0;
	}

	/** Returns the height. */
	public double height() {
		return y1 - y0;
	}

	/** Returns the middle. */
	public Point centre() {
		return new Point((x0 + x1) / 2, (y0 + y1) / 2);
	}

	/** Returns the smallest bounds that hold both. */
	public Bounds union(Bounds other) {
		return new Bounds(Math.min(x0, other.x0), Math.min(y0, other.y0), Math.max(x1, other.x1), Math.max(y1, other.y1));
	}

	/** Returns the bounds grown by a margin on all sides; a negative margin shrinks them, at most to nothing. */
	public Bounds grown(double margin) {
		double dx = Math.max(margin, -width() / 2);
		double dy = Math.max(margin, -height() / 2);
		return new Bounds(x0 - dx, y0 - dy, x1 + dx, y1 + dy);
	}

	/** Tells whether the insides overlap; touching edges do not. */
	public boolean overlaps(Bounds other) {
		return x0 < other.x1 && other.x0 < x1 && y0 < other.y1 && other.y0 < y1;
	}

	/** Tells whether the other lies wholly in this. */
	public boolean contains(Bounds other) {
		return x0 <= other.x0 && y0 <= other.y0 && x1 >= other.x1 && y1 >= other.y1;
	}

	/** Tells whether a point lies in this; the edges count as inside. */
	public boolean contains(Point point) {
		return x0 <= point.x() && point.x() <= x1 && y0 <= point.y() && point.y() <= y1;
	}
}
