// SPDX-License-Identifier: EPL-2.0
package wainscribe.drawing.elevation;

import java.util.List;

import wainscribe.drawing.Bounds;
import wainscribe.drawing.Point;
import wainscribe.layout.Member;

/**
 * A quadrilateral with plumb sides: a frame or strip, level or raked.
 *
 * @param corners lower left, lower right, upper right, upper left
 */
record Quad(List<Point> corners) {

	private static final double NOTHING = 1e-9;

	static Quad of(Member member) {
		double x0 = member.x().approximateMillimetres();
		double x1 = member.right().approximateMillimetres();
		double y0 = member.y().approximateMillimetres();
		double y1 = member.top().approximateMillimetres();
		return new Quad(List.of(new Point(x0, y0), new Point(x1, y0 + member.rise().approximateMillimetres()),
				new Point(x1, y1 + member.riseTop().approximateMillimetres()), new Point(x0, y1)));
	}

	static Quad of(Bounds bounds) {
		return new Quad(List.of(new Point(bounds.x0(), bounds.y0()), new Point(bounds.x1(), bounds.y0()),
				new Point(bounds.x1(), bounds.y1()), new Point(bounds.x0(), bounds.y1())));
	}

	Point corner(int index) {
		return corners.get(Math.floorMod(index, corners.size()));
	}

	/** Returns the direction square to a side, from the inside out; side 0 is the lower one, 1 the right one and so on. */
	Point outward(int side) {
		Point from = corner(side);
		Point to = corner(side + 1);
		double length = Math.max(NOTHING, from.distance(to));
		return new Point((to.y() - from.y()) / length, (from.x() - to.x()) / length);
	}

	/** Returns the quadrilateral whose sides lie inside by a distance, measured square to each side. */
	Quad inset(double distance) {
		return new Quad(List.of(insetCorner(0, distance), insetCorner(1, distance), insetCorner(2, distance),
				insetCorner(3, distance)));
	}

	private Point insetCorner(int index, double distance) {
		Point before = outward(index - 1);
		Point after = outward(index);
		double cross = before.x() * after.y() - before.y() * after.x();
		if (Math.abs(cross) < NOTHING) {
			return corner(index).plus(-after.x() * distance, -after.y() * distance);
		}
		// The corner moves by v with v . before = v . after = -distance.
		double dx = -distance * (after.y() - before.y()) / cross;
		double dy = -distance * (before.x() - after.x()) / cross;
		return corner(index).plus(dx, dy);
	}
}
