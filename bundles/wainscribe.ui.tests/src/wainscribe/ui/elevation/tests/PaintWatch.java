// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.elevation.tests;

import java.util.Map;

import org.eclipse.draw2d.FigureCanvas;
import org.eclipse.draw2d.UpdateListener;
import org.eclipse.draw2d.UpdateManager;
import org.eclipse.draw2d.geometry.Point;
import org.eclipse.draw2d.geometry.Rectangle;
import org.eclipse.gef.GraphicalViewer;

/** Notes which part of a table is painted. */
final class PaintWatch implements UpdateListener {

	private final FigureCanvas canvas;
	private final UpdateManager manager;
	private Rectangle painted = new Rectangle();

	private PaintWatch(FigureCanvas canvas) {
		this.canvas = canvas;
		this.manager = canvas.getViewport().getUpdateManager();
	}

	static PaintWatch on(GraphicalViewer viewer) {
		viewer.flush();
		PaintWatch watch = new PaintWatch((FigureCanvas) viewer.getControl());
		watch.manager.addUpdateListener(watch);
		return watch;
	}

	void stop() {
		manager.removeUpdateListener(this);
	}

	/** Returns the pixels of the table that were painted. */
	Rectangle painted() {
		Point scroll = canvas.getViewport().getViewLocation();
		return painted.getCopy().translate(scroll.x, scroll.y);
	}

	@Override
	public void notifyPainting(Rectangle damage, @SuppressWarnings("rawtypes") Map dirtyRegions) {
		painted = painted.isEmpty() ? damage.getCopy() : painted.union(damage);
	}

	@Override
	public void notifyValidating() {
		// of no interest
	}
}
