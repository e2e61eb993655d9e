// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.elevation.figures;

import org.eclipse.draw2d.Figure;
import org.eclipse.draw2d.Graphics;
import org.eclipse.draw2d.geometry.Rectangle;
import org.eclipse.swt.graphics.Color;

/**
 * The place of one thing in a drawing. The drawing paints the thing; this says where it can be pointed at, and tints it while
 * the pointer is over it.
 */
public final class OutlineFigure extends Figure {

	/** Things smaller than this can still be hit. */
	private static final int LEAST = 9;
	private static final int TINT = 56;

	private Color tint;
	private boolean pointedAt;

	/** Sets the colour of the tint. */
	public void setTint(Color colour) {
		tint = colour;
	}

	/** Shows that the pointer is over the thing, or not. */
	public void setPointedAt(boolean over) {
		if (pointedAt != over) {
			pointedAt = over;
			repaint();
		}
	}

	/** Takes the place of a thing; a place too small to be hit grows round its middle. */
	public void setPlace(Rectangle place) {
		Rectangle grown = place.getCopy();
		int dx = Math.max(0, LEAST - grown.width);
		int dy = Math.max(0, LEAST - grown.height);
		grown.x -= dx / 2;
		grown.width += dx;
		grown.y -= dy / 2;
		grown.height += dy;
		setBounds(grown);
	}

	@Override
	protected void paintFigure(Graphics graphics) {
		if (pointedAt && tint != null) {
			graphics.setAlpha(TINT);
			graphics.setBackgroundColor(tint);
			graphics.fillRectangle(getBounds());
		}
	}
}
