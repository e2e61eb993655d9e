// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.profile.tools;

import org.eclipse.gef.EditPart;
import org.eclipse.gef.tools.DragEditPartsTracker;

import wainscribe.ui.profile.policies.NodeDrag;

/** Drags points, segments and handles on their desk; with Alt free of lines. */
public final class NodeTracker extends DragEditPartsTracker {

	/** Creates a tracker of what is taken hold of. */
	public NodeTracker(EditPart held) {
		super(held);
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
		NodeDrag.note(getTargetRequest(), getSourceEditPart(), getCurrentInput().isAltKeyDown());
	}
}
