// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.elevation.tools;

import java.util.Objects;

import org.eclipse.draw2d.FigureCanvas;
import org.eclipse.draw2d.RangeModel;
import org.eclipse.draw2d.geometry.Point;
import org.eclipse.gef.EditPartViewer;
import org.eclipse.gef.MouseWheelHandler;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Event;

import wainscribe.ui.elevation.table.TableZoom;

/** The wheel: with Ctrl it zooms round the pointer; where nothing lies above or below it walks along the walls. */
public final class ScrollWheel implements MouseWheelHandler {

	private static final int NOTCH = 60;

	private final TableZoom zoom;

	/**
	 * Creates the handler.
	 *
	 * @param zoom zooms
	 */
	public ScrollWheel(TableZoom zoom) {
		this.zoom = Objects.requireNonNull(zoom);
	}

	/** Lets a viewer use it. */
	public void attachTo(EditPartViewer viewer) {
		viewer.setProperty(MouseWheelHandler.KeyGenerator.getKey(SWT.MOD1), this);
		viewer.setProperty(MouseWheelHandler.KeyGenerator.getKey(SWT.NONE), this);
	}

	@Override
	public void handleMouseWheel(Event event, EditPartViewer viewer) {
		if ((event.stateMask & SWT.MOD1) != 0) {
			event.doit = false;
			zoom.zoomAt(new Point(event.x, event.y), Integer.signum(event.count));
			return;
		}
		FigureCanvas canvas = (FigureCanvas) viewer.getControl();
		RangeModel vertical = canvas.getViewport().getVerticalRangeModel();
		if (vertical.getMaximum() - vertical.getMinimum() <= vertical.getExtent()) {
			event.doit = false;
			RangeModel level = canvas.getViewport().getHorizontalRangeModel();
			canvas.scrollToX(level.getValue() - Integer.signum(event.count) * NOTCH);
		}
	}
}
