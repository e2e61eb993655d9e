// SPDX-License-Identifier: EPL-2.0
package wainscribe.drawing.elevation;

import java.util.List;

import wainscribe.drawing.LayerName;
import wainscribe.drawing.Path;
import wainscribe.drawing.Point;
import wainscribe.drawing.Role;
import wainscribe.drawing.Subject;

/** Draws straight mouldings and mitred frames of them, shaded as light from the upper left falls on them. */
final class MouldingSketch {

	private static final int SIDES = 4;

	private final Sheet sheet;

	MouldingSketch(Sheet sheet) {
		this.sheet = sheet;
	}

	/**
	 * Draws a straight moulding.
	 *
	 * @param corners lower left, lower right, upper right, upper left
	 */
	void band(LayerName layer, Subject subject, List<Point> corners, Relief relief) {
		band(layer, subject, corners, relief, new Point(0, 1));
	}

	/** Draws an upright strip; its section runs from its right edge to its left one. */
	void upright(LayerName layer, Subject subject, Quad strip, Relief relief) {
		band(layer, subject, List.of(strip.corner(1), strip.corner(2), strip.corner(3), strip.corner(0)), relief, new Point(-1, 0));
	}

	private void band(LayerName layer, Subject subject, List<Point> corners, Relief relief, Point outward) {
		Relief shown = sheet.options().relief() ? relief : Relief.FLAT;
		for (Relief.Facet facet : shown.facets()) {
			Point lowerLeft = between(corners.get(0), corners.get(3), facet.from());
			Point lowerRight = between(corners.get(1), corners.get(2), facet.from());
			Point upperRight = between(corners.get(1), corners.get(2), facet.to());
			Point upperLeft = between(corners.get(0), corners.get(3), facet.to());
			sheet.add(layer, Path.polygon(subject, Relief.shade(facet, outward),
					List.of(lowerLeft, lowerRight, upperRight, upperLeft)));
			if (facet.from() > 0) {
				sheet.add(layer, Path.line(subject, Role.TRIM_ARRIS, lowerLeft, lowerRight));
			}
		}
		sheet.add(layer, Path.polygon(subject, Role.TRIM_EDGE, corners));
	}

	/**
	 * Draws a closed frame.
	 *
	 * @param outer outer edge of the moulding
	 * @param face  width of the moulding
	 */
	void frame(LayerName layer, Subject subject, Quad outer, double face, Relief relief) {
		Quad inner = outer.inset(face);
		sheet.add(layer, Path.polygon(subject, Role.FIELD, inner.corners()));
		Relief shown = sheet.options().relief() ? relief : Relief.FLAT;
		for (Relief.Facet facet : shown.facets()) {
			Quad far = outer.inset(face * (1 - facet.to()));
			Quad near = outer.inset(face * (1 - facet.from()));
			for (int side = 0; side < SIDES; side++) {
				sheet.add(layer, Path.polygon(subject, Relief.shade(facet, outer.outward(side)),
						List.of(far.corner(side), far.corner(side + 1), near.corner(side + 1), near.corner(side))));
			}
			if (facet.from() > 0) {
				sheet.add(layer, Path.polygon(subject, Role.TRIM_ARRIS, near.corners()));
			}
		}
		for (int corner = 0; corner < SIDES; corner++) {
			sheet.add(layer, Path.line(subject, Role.TRIM_ARRIS, outer.corner(corner), inner.corner(corner)));
		}
		sheet.add(layer, Path.polygon(subject, Role.TRIM_EDGE, inner.corners()));
		sheet.add(layer, Path.polygon(subject, Role.TRIM_EDGE, outer.corners()));
	}

	private static Point between(Point from, Point to, double share) {
		return new Point(from.x() + (to.x() - from.x()) * share, from.y() + (to.y() - from.y()) * share);
	}
}
