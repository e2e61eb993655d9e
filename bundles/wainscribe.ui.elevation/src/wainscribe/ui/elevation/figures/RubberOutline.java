// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.elevation.figures;

import org.eclipse.draw2d.Figure;
import org.eclipse.draw2d.Graphics;
import org.eclipse.draw2d.geometry.Rectangle;
import org.eclipse.swt.graphics.Color;

/** The outline of what is being dragged. */
public final class RubberOutline extends Figure {

	private static final int WIDTH = 2;

	/**
	 * Creates an outline.
	 *
	 * @param colour colour of the line
	 */
	public RubberOutline(Color colour) {
		setForegroundColor(colour);
	}

	@Override
	protected void paintFigure(Graphics graphics) {
		graphics.setLineWidth(WIDTH);
		Rectangle line = getBounds().getCopy().shrink(WIDTH / 2, WIDTH / 2);
		graphics.drawRectangle(line.x, line.y, line.width - 1, line.height - 1);
	}

	/** Never in the way of the pointer. */
	@Override
	public boolean containsPoint(int x, int y) {
		return false;
	}
}
