// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.elevation.tools;

import java.util.Objects;

import org.eclipse.draw2d.geometry.Dimension;
import org.eclipse.gef.EditPart;
import org.eclipse.gef.RequestConstants;
import org.eclipse.gef.requests.SelectionRequest;
import org.eclipse.gef.tools.MarqueeDragTracker;
import org.eclipse.swt.SWT;

/**
 * On the bare wall: a click selects the wall, a drag draws a rectangle and selects what lies in it. With Shift what lies in it
 * is added to what is selected.
 */
public final class WallMarquee extends MarqueeDragTracker {

	/** A hand that clicks may tremble so many pixels. */
	private static final int TREMBLE = 4;

	private static final int LEFT = 1;
	private static final int RIGHT = 3;

	private final EditPart wall;

	/** Creates a tracker for the part of a wall. */
	public WallMarquee(EditPart wall) {
		this.wall = Objects.requireNonNull(wall);
	}

	/** The menu opens for what is selected: the wall, unless it is already. */
	@Override
	protected boolean handleButtonDown(int button) {
		if (button == RIGHT && wall.getSelected() == EditPart.SELECTED_NONE) {
			wall.getViewer().select(wall);
		}
		return super.handleButtonDown(button);
	}

	@Override
	protected boolean handleButtonUp(int button) {
		Dimension way = getLocation().getDifference(getStartLocation());
		boolean clicked = Math.abs(way.width) <= TREMBLE && Math.abs(way.height) <= TREMBLE;
		boolean adds = getCurrentInput().isShiftKeyDown() || getCurrentInput().isModKeyDown(SWT.MOD1);
		super.handleButtonUp(button);
		if (button == LEFT && clicked) {
			if (adds) {
				wall.getViewer().appendSelection(wall);
			} else {
				wall.getViewer().select(wall);
			}
		}
		return true;
	}

	@Override
	protected boolean handleDoubleClick(int button) {
		if (button == LEFT) {
			SelectionRequest request = new SelectionRequest();
			request.setType(RequestConstants.REQ_OPEN);
			request.setLocation(getLocation());
			wall.performRequest(request);
		}
		return true;
	}
}
