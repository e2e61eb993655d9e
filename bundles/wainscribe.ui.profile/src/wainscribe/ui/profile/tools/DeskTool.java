// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.profile.tools;

import java.util.Objects;

import org.eclipse.draw2d.Cursors;
import org.eclipse.draw2d.IFigure;
import org.eclipse.draw2d.geometry.Point;
import org.eclipse.gef.GraphicalEditPart;
import org.eclipse.gef.GraphicalViewer;
import org.eclipse.gef.LayerConstants;
import org.eclipse.gef.editparts.LayerManager;
import org.eclipse.gef.tools.AbstractTool;
import org.eclipse.swt.SWT;
import org.eclipse.swt.events.KeyEvent;

import wainscribe.profile.section.SectionPoint;
import wainscribe.ui.profile.desk.ProfileDesk;

/** A tool that works on the plane of the desk. Escape gives the pointer back. */
abstract class DeskTool extends AbstractTool {

	private final GraphicalViewer viewer;
	private final ProfileDesk desk;

	DeskTool(GraphicalViewer viewer, ProfileDesk desk) {
		this.viewer = Objects.requireNonNull(viewer);
		this.desk = Objects.requireNonNull(desk);
		setDefaultCursor(Cursors.CROSS);
		setUnloadWhenFinished(false);
	}

	final GraphicalViewer viewer() {
		return viewer;
	}

	final ProfileDesk desk() {
		return desk;
	}

	/** Returns the point under the pointer, as near as the screen tells. */
	final SectionPoint pointed() {
		return desk.plane().spot(onDesk(getLocation())).nearest();
	}

	/** Turns a place on the control into one on the desk. */
	final Point onDesk(Point location) {
		Point point = location.getCopy();
		((GraphicalEditPart) viewer.getContents()).getFigure().translateToRelative(point);
		return point;
	}

	final IFigure feedbackLayer() {
		return LayerManager.Helper.find(viewer.getContents()).getLayer(LayerConstants.FEEDBACK_LAYER);
	}

	final boolean isFree() {
		return getCurrentInput().isAltKeyDown();
	}

	@Override
	protected String getCommandName() {
		return getClass().getName();
	}

	@Override
	protected boolean handleKeyDown(KeyEvent event) {
		if (event.keyCode == SWT.ESC) {
			getDomain().loadDefaultTool();
			return true;
		}
		return super.handleKeyDown(event);
	}
}
