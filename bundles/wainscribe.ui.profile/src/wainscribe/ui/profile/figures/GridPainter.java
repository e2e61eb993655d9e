// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.profile.figures;

import org.eclipse.draw2d.Graphics;
import org.eclipse.draw2d.geometry.Rectangle;

import wainscribe.drawing.Tone;
import wainscribe.ui.drafting.appearance.Appearance;
import wainscribe.ui.drafting.appearance.TableColours;

/** Paints the marks of the rulers across the desk, like the squares of a pad, the finer ones hardly to be seen. */
final class GridPainter {

	private static final double LEAST = 7;
	private static final double FINE = 0.055;
	private static final double NUMBERED = 0.17;

	private final Graphics graphics;
	private final TableColours colours;

	GridPainter(Graphics graphics, TableColours colours) {
		this.graphics = graphics;
		this.colours = colours;
	}

	void paint(double fine, double numbered, Rectangle seen) {
		if (fine >= LEAST && fine < numbered) {
			lines(fine, seen, tone(FINE));
		}
		if (numbered >= LEAST) {
			lines(numbered, seen, tone(NUMBERED));
		}
	}

	private Tone tone(double share) {
		return colours.drawing().ground().mixed(colours.drawing().note(), share);
	}

	private void lines(double step, Rectangle seen, Tone tone) {
		graphics.setForegroundColor(Appearance.colour(tone));
		graphics.setLineWidth(1);
		for (long i = (long) Math.floor(seen.x / step); i * step <= seen.right(); i++) {
			int x = (int) Math.round(i * step);
			graphics.drawLine(x, seen.y, x, seen.bottom());
		}
		for (long i = (long) Math.floor(seen.y / step); i * step <= seen.bottom(); i++) {
			int y = (int) Math.round(i * step);
			graphics.drawLine(seen.x, y, seen.right(), y);
		}
	}
}
