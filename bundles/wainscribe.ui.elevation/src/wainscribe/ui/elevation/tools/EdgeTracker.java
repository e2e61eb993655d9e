// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.elevation.tools;

import org.eclipse.gef.GraphicalEditPart;
import org.eclipse.gef.tools.ResizeTracker;

import wainscribe.ui.elevation.policies.DragRequests;

/** Drags an edge or a corner of a thing. */
public final class EdgeTracker extends ResizeTracker {

	/**
	 * Creates a tracker.
	 *
	 * @param owner     the thing
	 * @param direction which edge or corner
	 */
	public EdgeTracker(GraphicalEditPart owner, int direction) {
		super(owner, direction);
	}

	@Override
	protected void updateSourceRequest() {
		super.updateSourceRequest();
		DragRequests.setFree(getSourceRequest(), getCurrentInput().isAltKeyDown());
	}
}
