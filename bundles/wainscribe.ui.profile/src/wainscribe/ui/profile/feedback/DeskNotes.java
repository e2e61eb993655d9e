// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.profile.feedback;

import org.eclipse.draw2d.IFigure;
import org.eclipse.draw2d.Viewport;
import org.eclipse.draw2d.geometry.Rectangle;

/** Knows where notes can be read. */
public final class DeskNotes {

	private DeskNotes() {
	}

	/** Returns the part of a layer that is seen now. */
	public static Rectangle seen(IFigure layer) {
		for (IFigure figure = layer; figure != null; figure = figure.getParent()) {
			if (figure instanceof Viewport viewport) {
				return new Rectangle(viewport.getViewLocation(), viewport.getClientArea().getSize());
			}
		}
		return layer.getBounds().getCopy();
	}
}
