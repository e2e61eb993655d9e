// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.profile.figures;

import org.eclipse.draw2d.Graphics;
import org.eclipse.draw2d.geometry.Point;
import org.eclipse.draw2d.geometry.Rectangle;
import org.eclipse.swt.SWT;

/** A point as a small square, or a handle as a small disc on the end of its arm. */
public final class DotFigure extends NodeFigure {

	private static final int REACH = 7;
	private static final int HALF = 4;

	private final boolean round;
	private Point middle = new Point();
	private Point anchor;

	/**
	 * Creates a dot.
	 *
	 * @param round true for a handle
	 */
	public DotFigure(boolean round) {
		this.round = round;
	}

	/**
	 * Puts it at a place.
	 *
	 * @param at    its middle
	 * @param armOf where its arm begins; null for no arm
	 */
	public void place(Point at, Point armOf) {
		middle = at.getCopy();
		anchor = armOf == null ? null : armOf.getCopy();
		Rectangle bounds = new Rectangle(at.x - REACH, at.y - REACH, 2 * REACH + 1, 2 * REACH + 1);
		if (anchor != null) {
			bounds.union(anchor);
		}
		setBounds(bounds);
		repaint();
	}

	/** Returns its middle, on the desk. */
	public Point middle() {
		return middle.getCopy();
	}

	/** The arm is only looked at. */
	@Override
	public boolean containsPoint(int x, int y) {
		return isVisible() && Math.abs(x - middle.x) <= REACH && Math.abs(y - middle.y) <= REACH;
	}

	@Override
	protected void paintFigure(Graphics graphics) {
		graphics.setAntialias(SWT.ON);
		graphics.setForegroundColor(mark());
		if (anchor != null) {
			graphics.setLineWidth(1);
			graphics.drawLine(anchor, middle);
		}
		int half = isHovered() || isSelected() ? HALF + 1 : HALF;
		graphics.setBackgroundColor(isSelected() ? mark() : ground());
		graphics.setLineWidth(1);
		Rectangle box = new Rectangle(middle.x - half, middle.y - half, 2 * half, 2 * half);
		if (round) {
			graphics.fillOval(box);
			graphics.drawOval(box);
		} else {
			graphics.fillRectangle(box);
			graphics.drawRectangle(box);
		}
	}
}
