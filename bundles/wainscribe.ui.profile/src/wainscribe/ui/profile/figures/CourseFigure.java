// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.profile.figures;

import java.util.List;

import org.eclipse.draw2d.Graphics;
import org.eclipse.draw2d.geometry.Point;
import org.eclipse.draw2d.geometry.PointList;
import org.eclipse.swt.SWT;

/** The course of a segment: not seen itself, the desk paints it; a broad tint while it is pointed at or selected. */
public final class CourseFigure extends NodeFigure {

	private static final int REACH = 5;
	private static final int TINT = 8;
	private static final int HOVER_ALPHA = 70;
	private static final int SELECTED_ALPHA = 130;

	private PointList course = new PointList();

	/** Lays it along some pixels. */
	public void place(List<Point> pixels) {
		course = new PointList();
		pixels.forEach(course::addPoint);
		setBounds(course.getBounds().getCopy().expand(REACH + 2, REACH + 2));
		repaint();
	}

	@Override
	public boolean containsPoint(int x, int y) {
		return isVisible() && getBounds().contains(x, y) && isNear(x, y);
	}

	private boolean isNear(int x, int y) {
		for (int i = 1; i < course.size(); i++) {
			Point from = course.getPoint(i - 1);
			Point to = course.getPoint(i);
			double dx = to.x - (double) from.x;
			double dy = to.y - (double) from.y;
			double length = dx * dx + dy * dy;
			double share = length == 0 ? 0 : Math.clamp(((x - from.x) * dx + (y - from.y) * dy) / length, 0, 1);
			if (Math.hypot(x - from.x - share * dx, y - from.y - share * dy) <= REACH) {
				return true;
			}
		}
		return false;
	}

	@Override
	protected void paintFigure(Graphics graphics) {
		if (isSelected() || isHovered()) {
			graphics.setAntialias(SWT.ON);
			graphics.setForegroundColor(mark());
			graphics.setAlpha(isSelected() ? SELECTED_ALPHA : HOVER_ALPHA);
			graphics.setLineWidth(TINT);
			graphics.setLineCap(SWT.CAP_ROUND);
			graphics.drawPolyline(course);
		}
	}
}
