// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.profile.figures;

import org.eclipse.draw2d.Figure;
import org.eclipse.draw2d.Graphics;
import org.eclipse.draw2d.geometry.Point;
import org.eclipse.draw2d.geometry.Rectangle;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Color;

/** A ring round the place where a section is wrong. */
public final class FaultFigure extends Figure {

	private static final int RADIUS = 13;

	/** Creates a ring. */
	public FaultFigure(Color colour) {
		setForegroundColor(colour);
	}

	/** Puts it round a place. */
	public void placeRound(Point middle) {
		setBounds(new Rectangle(middle.x - RADIUS - 2, middle.y - RADIUS - 2, 2 * RADIUS + 5, 2 * RADIUS + 5));
	}

	@Override
	protected void paintFigure(Graphics graphics) {
		graphics.setAntialias(SWT.ON);
		graphics.setLineWidth(2);
		graphics.drawOval(getBounds().getCopy().shrink(2, 2));
	}

	/** Never in the way of the pointer. */
	@Override
	public boolean containsPoint(int x, int y) {
		return false;
	}
}
