// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.elevation;

import java.util.IdentityHashMap;
import java.util.Map;
import java.util.Objects;

import org.eclipse.draw2d.DeferredUpdateManager;
import org.eclipse.draw2d.Graphics;
import org.eclipse.draw2d.IFigure;
import org.eclipse.draw2d.geometry.Rectangle;
import org.eclipse.swt.widgets.Control;

import wainscribe.ui.elevation.figures.Patches;

/**
 * Asks the screen for just the parts that figures want painted. The superclass asks for one rectangle round all of them: with a
 * guide line from edge to edge that is the whole table.
 */
final class PatchUpdates extends DeferredUpdateManager {

	private final Control control;
	private Map<IFigure, Patches> patches = new IdentityHashMap<>();

	/**
	 * Creates the updates of a canvas.
	 *
	 * @param control the canvas
	 */
	PatchUpdates(Control control) {
		this.control = Objects.requireNonNull(control);
	}

	@Override
	public synchronized void addDirtyRegion(IFigure figure, int x, int y, int width, int height) {
		if (width > 0 && height > 0 && figure.isShowing()) {
			patches.computeIfAbsent(figure, key -> new Patches()).add(new Rectangle(x, y, width, height));
		}
		super.addDirtyRegion(figure, x, y, width, height);
	}

	/** Nothing is painted at once: the screen paints what it was asked for. */
	@Override
	protected Graphics getGraphics(Rectangle around) {
		Map<IFigure, Patches> wanted = patches;
		patches = new IdentityHashMap<>();
		Patches all = new Patches();
		wanted.forEach((figure, parts) -> parts.parts().forEach(part -> all.add(onCanvas(figure, part))));
		all.parts().forEach(part -> control.redraw(part.x, part.y, part.width, part.height, false));
		return null;
	}

	/** Returns what is seen of a part of a figure, as the superclass works it out. */
	private static Rectangle onCanvas(IFigure figure, Rectangle part) {
		Rectangle seen = part.getCopy().intersect(figure.getBounds());
		for (IFigure walker = figure.getParent(); walker != null && !seen.isEmpty(); walker = walker.getParent()) {
			walker.translateToParent(seen);
			seen.intersect(walker.getBounds());
		}
		return seen;
	}
}
