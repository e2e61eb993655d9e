// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.elevation.policies;

import org.eclipse.gef.EditPart;
import org.eclipse.gef.Request;
import org.eclipse.gef.RequestConstants;
import org.eclipse.gef.editpolicies.GraphicalEditPolicy;

import wainscribe.ui.elevation.editparts.ThingEditPart;

/** Tints a thing while the pointer is over it, so that one sees what a click would select. */
public final class PointedAtEditPolicy extends GraphicalEditPolicy {

	/** Role under which the policy is installed. */
	public static final Object ROLE = "wainscribe.pointedAt"; //$NON-NLS-1$

	@Override
	public EditPart getTargetEditPart(Request request) {
		return isSelection(request) ? getHost() : null;
	}

	@Override
	public void showTargetFeedback(Request request) {
		if (isSelection(request)) {
			((ThingEditPart) getHost()).getFigure().setPointedAt(true);
		}
	}

	@Override
	public void eraseTargetFeedback(Request request) {
		if (isSelection(request)) {
			((ThingEditPart) getHost()).getFigure().setPointedAt(false);
		}
	}

	private static boolean isSelection(Request request) {
		return RequestConstants.REQ_SELECTION.equals(request.getType());
	}
}
