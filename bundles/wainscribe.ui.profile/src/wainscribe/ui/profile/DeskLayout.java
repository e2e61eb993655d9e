// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.profile;

import java.util.Objects;

import org.eclipse.draw2d.FigureCanvas;
import org.eclipse.gef.GraphicalViewer;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Layout;

import wainscribe.ui.drafting.appearance.Appearance;
import wainscribe.ui.profile.desk.DeskListener;
import wainscribe.ui.profile.desk.ProfileDesk;
import wainscribe.ui.profile.rulers.DeskRuler;

/** The canvas with a ruler along the upper and the left edge, and the unit in the corner. */
final class DeskLayout extends Layout implements DeskListener {

	private static final double CORNER_TEXT = 11;

	private final ProfileDesk desk;
	private final FigureCanvas canvas;
	private final DeskRuler level;
	private final DeskRuler plumb;
	private final Canvas corner;

	private DeskLayout(Composite parent, GraphicalViewer viewer, ProfileDesk desk) {
		this.desk = Objects.requireNonNull(desk);
		canvas = (FigureCanvas) viewer.getControl();
		level = new DeskRuler(parent, desk, canvas, true);
		plumb = new DeskRuler(parent, desk, canvas, false);
		corner = new Canvas(parent, SWT.DOUBLE_BUFFERED | SWT.NO_FOCUS);
		corner.addListener(SWT.Paint, this::paintCorner);
		desk.addListener(this);
		parent.addListener(SWT.Dispose, event -> desk.removeListener(this));
	}

	/** Lays a viewer's canvas and its rulers out. */
	static void apply(Composite parent, GraphicalViewer viewer, ProfileDesk desk) {
		parent.setLayout(new DeskLayout(parent, viewer, desk));
	}

	@Override
	public void deskChanged() {
		if (!corner.isDisposed()) {
			corner.redraw();
		}
	}

	@Override
	protected Point computeSize(Composite composite, int width, int height, boolean flush) {
		return new Point(width, height);
	}

	@Override
	protected void layout(Composite composite, boolean flush) {
		Rectangle area = composite.getClientArea();
		int breadth = DeskRuler.BREADTH;
		corner.setBounds(0, 0, breadth, breadth);
		level.setBounds(breadth, 0, Math.max(0, area.width - breadth), breadth);
		plumb.setBounds(0, breadth, breadth, Math.max(0, area.height - breadth));
		canvas.setBounds(breadth, breadth, Math.max(0, area.width - breadth), Math.max(0, area.height - breadth));
	}

	private void paintCorner(Event event) {
		event.gc.setBackground(Appearance.colour(desk.colours().ruler()));
		event.gc.fillRectangle(corner.getClientArea());
		event.gc.setForeground(Appearance.colour(desk.colours().rulerInk()));
		event.gc.setFont(desk.letters().ofSize(CORNER_TEXT));
		String unit = desk.session().units().symbol();
		Point size = event.gc.textExtent(unit);
		event.gc.drawText(unit, (DeskRuler.BREADTH - size.x) / 2, (DeskRuler.BREADTH - size.y) / 2, true);
	}
}
