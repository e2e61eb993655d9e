// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.elevation.tools;

import org.eclipse.gef.EditPart;
import org.eclipse.gef.tools.DragEditPartsTracker;

import wainscribe.ui.elevation.policies.DragRequests;

/** Drags things on their wall: whatever is under the pointer, they are moved and neither copied nor carried over. */
public final class ThingTracker extends DragEditPartsTracker {

	/**
	 * Creates a tracker.
	 *
	 * @param source the thing taken hold of
	 */
	public ThingTracker(EditPart source) {
		super(source);
	}

	@Override
	protected boolean isMove() {
		return true;
	}

	@Override
	protected boolean isCloneActive() {
		return false;
	}

	@Override
	protected void updateTargetRequest() {
		super.updateTargetRequest();
		DragRequests.setFree(getTargetRequest(), getCurrentInput().isAltKeyDown());
	}
}
