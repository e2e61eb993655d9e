// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.elevation.policies;

import org.eclipse.gef.Request;
import org.eclipse.gef.commands.Command;
import org.eclipse.gef.editpolicies.AbstractEditPolicy;

import wainscribe.commands.PlaceFramesCommand;
import wainscribe.commands.ReleaseFramesCommand;
import wainscribe.ui.elevation.editparts.FrameEditPart;
import wainscribe.ui.drafting.history.ModelCommand;

/** Locks the frames of a tier where they stand, and gives them back to the room. */
public final class FrameLockEditPolicy extends AbstractEditPolicy {

	/** Role under which the policy is installed. */
	public static final Object ROLE = "wainscribe.lock"; //$NON-NLS-1$
	/** Type of the request to lock. */
	public static final String LOCK = "wainscribe.lock"; //$NON-NLS-1$
	/** Type of the request to let the room decide again. */
	public static final String RELEASE = "wainscribe.release"; //$NON-NLS-1$

	@Override
	public boolean understandsRequest(Request request) {
		return LOCK.equals(request.getType()) || RELEASE.equals(request.getType());
	}

	@Override
	public Command getCommand(Request request) {
		if (!understandsRequest(request)) {
			return null;
		}
		FrameEditPart part = (FrameEditPart) getHost();
		TierFrames tier = TierFrames.of(part.table().session().design(), part.getModel());
		if (RELEASE.equals(request.getType())) {
			return new ModelCommand(new ReleaseFramesCommand(tier.wall(), tier.placed()));
		}
		boolean open = tier.canBeHeld() && tier.placed().isEmpty();
		return open ? new ModelCommand(PlaceFramesCommand.locking(tier.wall(), tier.places())) : null;
	}
}
