// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.elevation.policies;

import java.util.Optional;

import org.eclipse.gef.commands.Command;
import org.eclipse.gef.editpolicies.ComponentEditPolicy;
import org.eclipse.gef.requests.GroupRequest;

import wainscribe.commands.PlaceFramesCommand;
import wainscribe.commands.RemoveElementCommand;
import wainscribe.layout.FrameOutline;
import wainscribe.layout.RoomDesign;
import wainscribe.model.PlacedFrame;
import wainscribe.ui.elevation.Messages;
import wainscribe.ui.elevation.editparts.FrameEditPart;
import wainscribe.ui.drafting.history.ModelCommand;
import wainscribe.ui.elevation.table.FrameKey;

/** Takes a frame away; the others of its tier stay where they stand. The last one of a tier stays. */
public final class RemoveFrameEditPolicy extends ComponentEditPolicy {

	@Override
	protected Command createDeleteCommand(GroupRequest request) {
		FrameEditPart part = (FrameEditPart) getHost();
		RoomDesign design = part.table().session().design();
		TierFrames tier = TierFrames.of(design, part.getModel());
		Optional<FrameOutline> frame = part.getModel().in(design);
		if (frame.isEmpty() || tier.frames().size() < 2) {
			return null;
		}
		Optional<PlacedFrame> placed = FrameKey.placed(tier.wall(), frame.get());
		if (placed.isPresent()) {
			return new ModelCommand(new RemoveElementCommand(placed.get()));
		}
		return new ModelCommand(new PlaceFramesCommand(Messages.RemoveFrameEditPolicy_Label, tier.wall(), tier.placed(),
				tier.placesWithout(frame.get())));
	}
}
