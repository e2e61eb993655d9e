// SPDX-License-Identifier: EPL-2.0
package wainscribe.drawing.elevation;

import java.util.ArrayList;
import java.util.List;

import wainscribe.drawing.Bounds;
import wainscribe.drawing.LayerName;
import wainscribe.drawing.Path;
import wainscribe.drawing.Point;
import wainscribe.drawing.Role;
import wainscribe.drawing.Segment;
import wainscribe.drawing.Subject;

/** Draws inside an outline, in shares of its width and height from the lower left corner. */
record Pencil(Sheet sheet, LayerName layer, Subject subject, Bounds area) {

	private static final double QUARTER = Math.PI / 2;

	double x(double share) {
		return area.x0() + area.width() * share;
	}

	double y(double share) {
		return area.y0() + area.height() * share;
	}

	Point at(double x, double y) {
		return new Point(x(x), y(y));
	}

	/** Returns the shorter side in millimetres. */
	double shorter() {
		return Math.min(area.width(), area.height());
	}

	void box(Role role, double x0, double y0, double x1, double y1) {
		sheet.box(layer, subject, role, new Bounds(x(x0), y(y0), x(x1), y(y1)));
	}

	void whole(Role role) {
		sheet.box(layer, subject, role, area);
	}

	void line(Role role, double x0, double y0, double x1, double y1) {
		sheet.line(layer, subject, role, x(x0), y(y0), x(x1), y(y1));
	}

	/** Draws a closed shape through corners given as x, y, x, y and so on. */
	void polygon(Role role, double... shares) {
		List<Point> corners = new ArrayList<>();
		for (int i = 0; i + 1 < shares.length; i += 2) {
			corners.add(at(shares[i], shares[i + 1]));
		}
		sheet.add(layer, Path.polygon(subject, role, corners));
	}

	/** Draws a circle; its radius is a share of the shorter side. */
	void circle(Role role, double x, double y, double radius) {
		sheet.add(layer, Path.circle(subject, role, at(x, y), Math.max(0.5, radius * shorter())));
	}

	/** Draws a box with rounded corners; the radius is in millimetres and never more than half a side. */
	void rounded(Role role, double x0, double y0, double x1, double y1, double radius) {
		double left = x(x0);
		double bottom = y(y0);
		double right = x(x1);
		double top = y(y1);
		double r = Math.max(0.1, Math.min(radius, Math.min(right - left, top - bottom) / 2));
		sheet.add(layer, new Path(subject, role, new Point(left + r, bottom),
				List.of(new Segment.Straight(new Point(right - r, bottom)), turn(right, bottom + r, right - r, bottom + r),
						new Segment.Straight(new Point(right, top - r)), turn(right - r, top, right - r, top - r),
						new Segment.Straight(new Point(left + r, top)), turn(left, top - r, left + r, top - r),
						new Segment.Straight(new Point(left, bottom + r)), turn(left + r, bottom, left + r, bottom + r)),
				true));
	}

	private static Segment turn(double x, double y, double centreX, double centreY) {
		return new Segment.Curve(new Point(x, y), new Point(centreX, centreY), QUARTER);
	}
}
