// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.elevation.gaps;

import org.eclipse.draw2d.Figure;
import org.eclipse.draw2d.Graphics;
import org.eclipse.draw2d.geometry.Rectangle;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Color;

/** Shows the gap under the pointer: a tint over it and a bar in its middle to take hold of. */
final class GapMark extends Figure {

	private static final int TINT = 56;
	private static final int OPAQUE = 255;
	private static final int BAR = 4;
	private static final int LENGTH = 24;

	private final Color bar;
	private final Color tint;

	GapMark(Color bar, Color tint) {
		this.bar = bar;
		this.tint = tint;
	}

	/** Paints the bar of a gap. */
	static void paintBar(Graphics graphics, Rectangle area, boolean upright, Color colour) {
		int length = Math.min(LENGTH, upright ? area.width : area.height);
		int width = upright ? length : BAR;
		int height = upright ? BAR : length;
		graphics.setAntialias(SWT.ON);
		graphics.setBackgroundColor(colour);
		graphics.fillRoundRectangle(new Rectangle(area.x + (area.width - width) / 2, area.y + (area.height - height) / 2,
				width, height), BAR, BAR);
	}

	@Override
	protected void paintFigure(Graphics graphics) {
		graphics.setAlpha(TINT);
		graphics.setBackgroundColor(tint);
		graphics.fillRectangle(getBounds());
		graphics.setAlpha(OPAQUE);
		paintBar(graphics, getBounds(), getBounds().width > getBounds().height, bar);
	}

	/** Never in the way of the pointer: the wall is what is taken hold of. */
	@Override
	public boolean containsPoint(int x, int y) {
		return false;
	}
}
