// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.elevation.policies;

import java.util.List;
import java.util.Optional;

import wainscribe.commands.EditCommand;
import wainscribe.commands.FramePlace;
import wainscribe.commands.PlaceFramesCommand;
import wainscribe.layout.FrameOutline;
import wainscribe.layout.RoomDesign;
import wainscribe.model.outline.Outline;
import wainscribe.ui.elevation.feedback.Proposal;
import wainscribe.ui.elevation.snapping.EdgeShift;
import wainscribe.ui.elevation.snapping.Pull;
import wainscribe.ui.elevation.snapping.Snapper;
import wainscribe.ui.elevation.table.FrameKey;
import wainscribe.ui.elevation.words.DragNotes;

/** Moves a frame or one of its edges: places and locks the frames of its tier, the others where they stand. */
public final class FrameEditPolicy extends LiveDragEditPolicy {

	@Override
	protected Optional<Proposal> propose(EdgeShift shift, Pull pull) {
		FrameKey key = (FrameKey) getHost().getModel();
		RoomDesign design = table().session().design();
		TierFrames tier = TierFrames.of(design, key);
		return key.in(design).filter(frame -> tier.canBePlaced()).map(frame -> {
			Outline before = FrameKey.outline(frame);
			Snapper.Result snapped = snapped(before, shift, pull);
			Outline after = snapped.shift().applyTo(before);
			return new Proposal(command(tier, frame, after, shift.isMove()), key.wall(), after, snapped.plumb(), snapped.level(),
					trial -> DragNotes.frame(trial, key.wall(), after, table().units()));
		});
	}

	private static EditCommand command(TierFrames tier, FrameOutline frame, Outline after, boolean move) {
		List<FramePlace> places = tier.placesWith(frame, after);
		return move ? PlaceFramesCommand.moving(tier.wall(), tier.placed(), places)
				: PlaceFramesCommand.sizing(tier.wall(), tier.placed(), places);
	}

	@Override
	protected Object moved() {
		return ((FrameKey) getHost().getModel()).in(table().session().design()).orElse(null);
	}
}
