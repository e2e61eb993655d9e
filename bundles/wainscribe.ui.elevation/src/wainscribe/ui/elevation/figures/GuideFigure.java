// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.elevation.figures;

import org.eclipse.draw2d.Figure;
import org.eclipse.draw2d.Graphics;
import org.eclipse.swt.graphics.Color;

/** A thin line that something was drawn to, plumb or level. */
public final class GuideFigure extends Figure {

	/**
	 * Creates a line.
	 *
	 * @param colour its colour
	 */
	public GuideFigure(Color colour) {
		setBackgroundColor(colour);
	}

	@Override
	protected void paintFigure(Graphics graphics) {
		graphics.fillRectangle(getBounds());
	}

	/** Never in the way of the pointer. */
	@Override
	public boolean containsPoint(int x, int y) {
		return false;
	}
}
