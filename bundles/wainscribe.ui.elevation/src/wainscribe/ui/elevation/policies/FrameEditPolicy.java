// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.elevation.policies;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.eclipse.draw2d.IFigure;

import wainscribe.commands.EditCommand;
import wainscribe.commands.FramePlace;
import wainscribe.commands.PlaceFramesCommand;
import wainscribe.layout.FrameOutline;
import wainscribe.layout.RoomDesign;
import wainscribe.model.outline.Outline;
import wainscribe.ui.elevation.editparts.FrameEditPart;
import wainscribe.ui.elevation.feedback.Proposal;
import wainscribe.ui.elevation.gaps.GapHandle;
import wainscribe.ui.elevation.snapping.EdgeShift;
import wainscribe.ui.elevation.snapping.Pull;
import wainscribe.ui.elevation.snapping.Snapper;
import wainscribe.ui.elevation.table.FrameKey;
import wainscribe.ui.elevation.words.DragNotes;

/**
 * Moves a frame or one of its edges: places and locks the frames of its tier, the others where they stand. A frame on a slope is
 * moved along it.
 */
public final class FrameEditPolicy extends LiveDragEditPolicy {

	@Override
	protected Optional<Proposal> propose(EdgeShift shift, Pull pull) {
		FrameKey key = (FrameKey) getHost().getModel();
		RoomDesign design = table().session().design();
		TierFrames tier = TierFrames.of(design, key);
		return key.in(design).filter(frame -> tier.canBeHeld()).map(frame -> {
			Slope slope = Slope.of(key.wall(), frame);
			Snapper.Result snapped = snapped(FrameKey.outline(frame), slope.kept(shift), pull);
			EdgeShift done = snapped.shift();
			Outline after = slope.shifted(done);
			return new Proposal(command(tier, frame, slope.held(after), done.isMove()), key.wall(), slope.covered(after),
					snapped.plumb(), frame.isRaked() ? null : snapped.level(),
					trial -> DragNotes.frame(trial, key.wall(), after, table().units()));
		});
	}

	private static EditCommand command(TierFrames tier, FrameOutline frame, Outline after, boolean move) {
		List<FramePlace> places = tier.placesWith(frame, after);
		return move ? PlaceFramesCommand.moving(tier.wall(), tier.placed(), places)
				: PlaceFramesCommand.sizing(tier.wall(), tier.placed(), places);
	}

	/** The gaps round a selected frame can be taken hold of as well. */
	@Override
	protected List<IFigure> createSelectionHandles() {
		List<IFigure> handles = new ArrayList<>(super.createSelectionHandles());
		handles.addAll(GapHandle.of((FrameEditPart) getHost()));
		return handles;
	}

	@Override
	protected Object moved() {
		return ((FrameKey) getHost().getModel()).in(table().session().design()).orElse(null);
	}
}
