// SPDX-License-Identifier: EPL-2.0
package wainscribe.drawing.elevation;

import java.util.List;

import wainscribe.drawing.LayerName;
import wainscribe.drawing.Path;
import wainscribe.drawing.Point;
import wainscribe.drawing.Role;
import wainscribe.drawing.Subject;

/** Draws the face of the wall, its outline and the floor it stands on. */
final class WallSketch {

	private static final Subject WALL = Subject.of(Subject.Kind.WALL);
	private static final double HATCH_STEP = 2.5;
	private static final double HATCH_DEPTH = 1.6;

	private final Sheet sheet;
	private final WallLines lines;

	WallSketch(Sheet sheet, WallLines lines) {
		this.sheet = sheet;
		this.lines = lines;
	}

	/**
	 * Draws the wall.
	 *
	 * @param railTop height of the rail over the floor line; zero without a rail
	 */
	void draw(double railTop) {
		double length = lines.length();
		List<Point> outline = List.of(new Point(0, 0), new Point(length, lines.floor(length)),
				new Point(length, lines.ceiling(length)), new Point(0, lines.ceiling(0)));
		sheet.add(LayerName.WALL, Path.polygon(WALL, Role.WALL_FACE, outline));
		if (railTop > 0) {
			sheet.add(LayerName.WALL,
					Path.polygon(WALL, Role.WALL_FACE_LOWER, lines.overFloor(new Span(0, length), 0, railTop)));
		}
		sheet.add(LayerName.WALL, Path.polygon(WALL, Role.WALL_EDGE, outline));
		sheet.line(LayerName.WALL, WALL, Role.FLOOR_LINE, 0, 0, length, lines.floor(length));
		hatch(length);
	}

	private void hatch(double length) {
		double step = sheet.paper(HATCH_STEP);
		double depth = sheet.paper(HATCH_DEPTH);
		int count = (int) Math.floor(length / step);
		for (int i = 1; i <= count; i++) {
			double x = i * step;
			sheet.line(LayerName.HATCH, Subject.NONE, Role.CUT, x, lines.floor(x), x - depth, lines.floor(x - depth) - depth);
		}
	}
}
