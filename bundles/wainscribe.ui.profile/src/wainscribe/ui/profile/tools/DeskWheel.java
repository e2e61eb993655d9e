// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.profile.tools;

import java.util.Objects;

import org.eclipse.draw2d.geometry.Point;
import org.eclipse.gef.EditPartViewer;
import org.eclipse.gef.MouseWheelHandler;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Event;

import wainscribe.ui.profile.desk.DeskZoom;

/** The wheel zooms round the pointer, with and without Ctrl: a section is small, and there is little to scroll. */
public final class DeskWheel implements MouseWheelHandler {

	private final DeskZoom zoom;

	/** Creates the handler. */
	public DeskWheel(DeskZoom zoom) {
		this.zoom = Objects.requireNonNull(zoom);
	}

	/** Lets a viewer use it. */
	public void attachTo(EditPartViewer viewer) {
		viewer.setProperty(MouseWheelHandler.KeyGenerator.getKey(SWT.MOD1), this);
		viewer.setProperty(MouseWheelHandler.KeyGenerator.getKey(SWT.NONE), this);
	}

	@Override
	public void handleMouseWheel(Event event, EditPartViewer viewer) {
		event.doit = false;
		zoom.zoomAt(new Point(event.x, event.y), Integer.signum(event.count));
	}
}
