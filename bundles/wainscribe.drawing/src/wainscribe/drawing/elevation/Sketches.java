// SPDX-License-Identifier: EPL-2.0
package wainscribe.drawing.elevation;

import wainscribe.drawing.Bounds;
import wainscribe.model.Placed;
import wainscribe.model.outline.Outline;
import wainscribe.model.outline.Outlines;

/** Exact outlines as bounds for painting. */
final class Sketches {

	private Sketches() {
	}

	static Bounds bounds(Placed placed) {
		return bounds(Outlines.of(placed));
	}

	static Bounds bounds(Outline outline) {
		return new Bounds(outline.x0().approximateMillimetres(), outline.y0().approximateMillimetres(),
				outline.x1().approximateMillimetres(), outline.y1().approximateMillimetres());
	}
}
