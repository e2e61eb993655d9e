// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.elevation.overview;

import org.eclipse.draw2d.geometry.Point;
import org.eclipse.draw2d.geometry.Rectangle;

/**
 * How the pixels of the drawing and those of the overview belong together.
 *
 * @param scale pixels of the overview for one of the drawing
 * @param left  where the drawing's left edge lies in the overview
 * @param top   where its upper edge lies
 */
record OverviewMap(double scale, double left, double top) {

	private static final int MARGIN = 6;

	/** Fits a drawing into an overview, in its middle. */
	static OverviewMap of(Rectangle drawing, Rectangle overview) {
		double width = Math.max(1, drawing.width);
		double height = Math.max(1, drawing.height);
		double scale = Math.max(1e-6, Math.min((overview.width - 2 * MARGIN) / width, (overview.height - 2 * MARGIN) / height));
		return new OverviewMap(scale, (overview.width - width * scale) / 2, (overview.height - height * scale) / 2);
	}

	/** Returns where pixels of the drawing lie in the overview. */
	Rectangle small(Rectangle pixels) {
		int x = (int) Math.round(left + pixels.x * scale);
		int y = (int) Math.round(top + pixels.y * scale);
		return new Rectangle(x, y, Math.max(1, (int) Math.round(left + pixels.right() * scale) - x),
				Math.max(1, (int) Math.round(top + pixels.bottom() * scale) - y));
	}

	/** Returns which pixel of the drawing lies at a place of the overview. */
	Point large(int x, int y) {
		return new Point((int) Math.round((x - left) / scale), (int) Math.round((y - top) / scale));
	}
}
