// SPDX-License-Identifier: EPL-2.0
package wainscribe.drawing.elevation;

import wainscribe.drawing.Bounds;
import wainscribe.model.Placed;
import wainscribe.model.Wall;
import wainscribe.model.length.Length;
import wainscribe.model.outline.Outline;
import wainscribe.model.outline.Outlines;
import wainscribe.model.outline.WallShape;

/**
 * Exact outlines as bounds for painting. The survey measures heights from the floor line, a drawing from the finished floor at
 * the wall's left end, so on stairs a thing is lifted by the floor line under its left edge.
 */
final class Sketches {

	private Sketches() {
	}

	/** Returns the outline of a thing as it stands on its wall. */
	static Bounds bounds(Placed placed) {
		return bounds(onWall(Outlines.of(placed), placed));
	}

	/** Returns an outline of a thing, measured from the floor line, from the finished floor at the wall's left end. */
	static Outline onWall(Outline outline, Placed placed) {
		Length lift = placed.eContainer() instanceof Wall wall ? WallShape.of(wall).floorAt(outline.x0()) : Length.ZERO;
		return new Outline(outline.x0(), outline.y0().plus(lift), outline.x1(), outline.y1().plus(lift));
	}

	private static Bounds bounds(Outline outline) {
		return new Bounds(outline.x0().approximateMillimetres(), outline.y0().approximateMillimetres(),
				outline.x1().approximateMillimetres(), outline.y1().approximateMillimetres());
	}
}
