// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.elevation;

import java.util.Objects;

import org.eclipse.draw2d.FigureCanvas;
import org.eclipse.draw2d.IFigure;
import org.eclipse.draw2d.geometry.Rectangle;
import org.eclipse.gef.GraphicalEditPart;
import org.eclipse.gef.GraphicalViewer;
import org.eclipse.gef.handles.HandleBounds;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Layout;

import wainscribe.ui.drafting.appearance.Appearance;
import wainscribe.ui.elevation.editparts.WallEditPart;
import wainscribe.ui.elevation.rulers.GuidePull;
import wainscribe.ui.elevation.rulers.Ruler;
import wainscribe.ui.elevation.table.DrawingTable;
import wainscribe.ui.elevation.table.TableListener;
import wainscribe.ui.elevation.table.TableZoom;

/** The canvas with a ruler along the upper and the left edge, and the unit in the corner. */
final class TableLayout extends Layout implements TableListener {

	private static final double CORNER_TEXT = 11;

	private final DrawingTable table;
	private final FigureCanvas canvas;
	private final Ruler level;
	private final Ruler plumb;
	private final Canvas corner;
	private final GraphicalViewer viewer;

	private TableLayout(Composite parent, GraphicalViewer viewer, DrawingTable table, TableZoom zoom) {
		this.table = Objects.requireNonNull(table);
		this.viewer = Objects.requireNonNull(viewer);
		canvas = (FigureCanvas) viewer.getControl();
		level = new Ruler(parent, table, canvas, true);
		plumb = new Ruler(parent, table, canvas, false);
		GuidePull.outOf(level, true, table, viewer);
		GuidePull.outOf(plumb, false, table, viewer);
		corner = new Canvas(parent, SWT.DOUBLE_BUFFERED | SWT.NO_FOCUS);
		corner.addListener(SWT.Paint, this::paintCorner);
		table.addListener(this);
		parent.addListener(SWT.Dispose, event -> table.removeListener(this));
		zoom.addListener(this::drawingsChanged);
		viewer.addSelectionChangedListener(event -> band());
	}

	/** Lays a viewer's canvas and its rulers out. */
	static void apply(Composite parent, GraphicalViewer viewer, DrawingTable table, TableZoom zoom) {
		parent.setLayout(new TableLayout(parent, viewer, table, zoom));
	}

	@Override
	public void drawingsChanged() {
		if (!level.isDisposed()) {
			band();
			level.redraw();
			plumb.redraw();
			corner.redraw();
		}
	}

	@Override
	protected Point computeSize(Composite composite, int width, int height, boolean flush) {
		return new Point(width, height);
	}

	@Override
	protected void layout(Composite composite, boolean flush) {
		org.eclipse.swt.graphics.Rectangle area = composite.getClientArea();
		int breadth = Ruler.BREADTH;
		corner.setBounds(0, 0, breadth, breadth);
		level.setBounds(breadth, 0, Math.max(0, area.width - breadth), breadth);
		plumb.setBounds(0, breadth, breadth, Math.max(0, area.height - breadth));
		canvas.setBounds(breadth, breadth, Math.max(0, area.width - breadth), Math.max(0, area.height - breadth));
	}

	@Override
	public void trialShown() {
		band();
	}

	private void band() {
		Rectangle band = null;
		for (Object part : viewer.getSelectedEditParts()) {
			IFigure figure = ((GraphicalEditPart) part).getFigure();
			Rectangle bounds = figure instanceof HandleBounds own ? own.getHandleBounds() : figure.getBounds();
			boolean onWall = ((GraphicalEditPart) part).getParent() instanceof WallEditPart;
			if (onWall) {
				band = band == null ? bounds.getCopy() : band.union(bounds);
			}
		}
		level.setBand(band);
		plumb.setBand(band);
	}

	private void paintCorner(Event event) {
		event.gc.setBackground(Appearance.colour(table.colours().ruler()));
		event.gc.fillRectangle(corner.getClientArea());
		event.gc.setForeground(Appearance.colour(table.colours().rulerInk()));
		event.gc.setFont(table.letters().ofSize(CORNER_TEXT));
		String unit = table.units().symbol();
		Point size = event.gc.textExtent(unit);
		event.gc.drawText(unit, (Ruler.BREADTH - size.x) / 2, (Ruler.BREADTH - size.y) / 2, true);
	}
}
