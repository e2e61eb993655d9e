// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.elevation.figures;

import java.util.Objects;

import org.eclipse.draw2d.Figure;
import org.eclipse.draw2d.Graphics;
import org.eclipse.draw2d.geometry.Rectangle;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Color;

/**
 * The place of one thing in a drawing. The drawing paints the thing; this says where it can be pointed at, and tints it while
 * the pointer is over it.
 */
public class OutlineFigure extends Figure {

	/** Things smaller than this can still be hit. */
	private static final int LEAST = 9;
	private static final int TINT = 56;
	private static final int OPAQUE = 255;
	private static final int HALF_TURN = 180;

	private static final int LOCK_WIDTH = 8;
	private static final int LOCK_BODY = 6;
	private static final int LOCK_INSET = 5;
	private static final int ROOM_FOR_LOCK = 30;

	private Color tint;
	private Color lock;
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

	/** Marks the thing as locked by a small padlock in this colour; null for none. */
	public void setLock(Color colour) {
		if (!Objects.equals(lock, colour)) {
			lock = colour;
			repaint();
		}
	}

	/** Takes the place of a thing; a place too small to be hit grows round its middle. */
	public final void setPlace(Rectangle place) {
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
			graphics.setAlpha(OPAQUE);
		}
		if (lock != null && getBounds().width >= ROOM_FOR_LOCK && getBounds().height >= ROOM_FOR_LOCK) {
			paintLock(graphics);
		}
	}

	private void paintLock(Graphics graphics) {
		int x = getBounds().right() - LOCK_INSET * 2 - LOCK_WIDTH;
		int y = getBounds().y + LOCK_INSET * 2 + LOCK_BODY;
		graphics.setAntialias(SWT.ON);
		graphics.setForegroundColor(lock);
		graphics.setBackgroundColor(lock);
		graphics.fillRectangle(x, y, LOCK_WIDTH, LOCK_BODY);
		graphics.drawArc(x + 1, y - LOCK_BODY / 2, LOCK_WIDTH - 3, LOCK_BODY, 0, HALF_TURN);
	}
}
