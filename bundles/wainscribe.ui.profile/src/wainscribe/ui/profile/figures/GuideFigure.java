// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.profile.figures;

import org.eclipse.draw2d.Graphics;
import org.eclipse.draw2d.Polyline;
import org.eclipse.draw2d.geometry.Point;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Color;

/** A dotted line that something was drawn to. */
public final class GuideFigure extends Polyline {

	/** Creates a line between two pixels. */
	public GuideFigure(Point from, Point to, Color colour) {
		addPoint(from);
		addPoint(to);
		setForegroundColor(colour);
		setLineStyle(SWT.LINE_DASH);
	}

	@Override
	protected void outlineShape(Graphics graphics) {
		graphics.setAntialias(SWT.ON);
		super.outlineShape(graphics);
	}

	/** Never in the way of the pointer. */
	@Override
	public boolean containsPoint(int x, int y) {
		return false;
	}
}
