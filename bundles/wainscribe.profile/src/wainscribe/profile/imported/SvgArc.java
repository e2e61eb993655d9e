// SPDX-License-Identifier: EPL-2.0
package wainscribe.profile.imported;

/**
 * An arc of an ellipse between two points, y upwards (SVG 1.1, appendix F.6). One of a circle stays an arc; of an ellipse each
 * quarter becomes a Bezier curve, less than 0.03 % of its larger half axis off.
 *
 * @param turn     of the ellipse, radians anticlockwise
 * @param large    whether the longer way round is taken
 * @param positive whether it runs anticlockwise
 */
record SvgArc(double x0, double y0, double x1, double y1, double rx, double ry, double turn, boolean large, boolean positive) {

	private static final double ALIKE = 1e-9;

	void draw(TracePen pen) {
		double chord = Math.hypot(x1 - x0, y1 - y0);
		if (rx == 0 || ry == 0 || chord == 0) {
			pen.lineTo(x1, y1);
		} else if (Math.abs(rx - ry) < ALIKE * rx) {
			double radius = Math.max(rx, chord / 2);
			double far = Math.sqrt(Math.max(0, radius * radius - chord * chord / 4));
			double rise = large ? radius + far : radius - far;
			pen.arcTo(x1, y1, positive ? -rise : rise);
		} else {
			ellipse(pen);
		}
	}

	private void ellipse(TracePen pen) {
		double cos = Math.cos(turn);
		double sin = Math.sin(turn);
		double dx = (cos * (x0 - x1) + sin * (y0 - y1)) / 2;
		double dy = (-sin * (x0 - x1) + cos * (y0 - y1)) / 2;
		double grow = Math.sqrt(Math.max(1, dx * dx / (rx * rx) + dy * dy / (ry * ry)));
		double a = rx * grow;
		double b = ry * grow;
		double far = (a * a * b * b - a * a * dy * dy - b * b * dx * dx) / (a * a * dy * dy + b * b * dx * dx);
		double factor = Math.sqrt(Math.max(0, far)) * (large == positive ? -1 : 1);
		double ux = factor * a * dy / b;
		double uy = -factor * b * dx / a;
		double from = Math.atan2((dy - uy) / b, (dx - ux) / a);
		double sweep = Math.atan2((-dy - uy) / b, (-dx - ux) / a) - from;
		if (positive && sweep < 0) {
			sweep += 2 * Math.PI;
		} else if (!positive && sweep > 0) {
			sweep -= 2 * Math.PI;
		}
		double cx = cos * ux - sin * uy + (x0 + x1) / 2;
		double cy = sin * ux + cos * uy + (y0 + y1) / 2;
		int count = (int) Math.max(1, Math.ceil(Math.abs(sweep) / (Math.PI / 2) - ALIKE));
		double step = sweep / count;
		double handle = 4 / 3.0 * Math.tan(step / 4);
		for (int i = 0; i < count; i++) {
			double t0 = from + step * i;
			double t1 = t0 + step;
			double[] c1 = { a * (Math.cos(t0) - handle * Math.sin(t0)), b * (Math.sin(t0) + handle * Math.cos(t0)) };
			double[] c2 = { a * (Math.cos(t1) + handle * Math.sin(t1)), b * (Math.sin(t1) - handle * Math.cos(t1)) };
			double[] end = { a * Math.cos(t1), b * Math.sin(t1) };
			boolean last = i == count - 1;
			pen.curveTo(cx + cos * c1[0] - sin * c1[1], cy + sin * c1[0] + cos * c1[1], cx + cos * c2[0] - sin * c2[1],
					cy + sin * c2[0] + cos * c2[1], last ? x1 : cx + cos * end[0] - sin * end[1],
					last ? y1 : cy + sin * end[0] + cos * end[1]);
		}
	}
}
