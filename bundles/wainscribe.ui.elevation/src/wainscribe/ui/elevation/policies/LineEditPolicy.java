// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.elevation.policies;

import java.util.Optional;

import org.eclipse.draw2d.PositionConstants;
import org.eclipse.draw2d.geometry.Point;
import org.eclipse.gef.commands.Command;
import org.eclipse.gef.requests.ChangeBoundsRequest;

import wainscribe.commands.MoveLineCommand;
import wainscribe.commands.RemoveLineCommand;
import wainscribe.model.length.Length;
import wainscribe.model.outline.Outline;
import wainscribe.model.outline.WallShape;
import wainscribe.ui.drafting.history.ModelCommand;
import wainscribe.ui.elevation.editparts.LineEditPart;
import wainscribe.ui.elevation.feedback.Proposal;
import wainscribe.ui.elevation.snapping.EdgeShift;
import wainscribe.ui.elevation.snapping.Pull;
import wainscribe.ui.elevation.snapping.Snapper;
import wainscribe.ui.elevation.table.LineKey;
import wainscribe.ui.elevation.words.DragNotes;

/** Lays an axis or guide elsewhere; a guide that is dragged back over the ruler goes. */
public final class LineEditPolicy extends LiveDragEditPolicy {

	/** Creates the policy; a line has no size. */
	public LineEditPolicy() {
		setResizeDirections(PositionConstants.NONE);
	}

	@Override
	protected Optional<Proposal> propose(EdgeShift shift, Pull pull) {
		LineEditPart part = (LineEditPart) getHost();
		LineKey key = part.getModel();
		return part.outline().map(before -> {
			Snapper.Result snapped = snapped(before, key.isPlumb() ? shift.levelOnly() : shift.plumbOnly(), pull);
			Outline after = snapped.shift().applyTo(before);
			Length at = clamped(key.isPlumb() ? after.x0() : after.y0());
			Outline there = key.isPlumb() ? new Outline(at, after.y0(), at, after.y1()) : new Outline(after.x0(), at, after.x1(), at);
			return new Proposal(new MoveLineCommand(key.line(), at), key.wall(), there, snapped.plumb(), snapped.level(),
					design -> DragNotes.line(design, key, at, table().units()));
		});
	}

	private Length clamped(Length at) {
		LineKey key = ((LineEditPart) getHost()).getModel();
		Length from = at.max(Length.ZERO);
		return key.isPlumb() ? from.min(WallShape.of(key.wall()).length()) : from;
	}

	@Override
	protected Command getMoveCommand(ChangeBoundsRequest request) {
		LineKey key = ((LineEditPart) getHost()).getModel();
		return isOverRuler(key, request.getLocation()) ? new ModelCommand(new RemoveLineCommand(key.line()))
				: super.getMoveCommand(request);
	}

	/** The rulers lie above and left of the canvas. */
	private static boolean isOverRuler(LineKey key, Point pointer) {
		return !key.isAxis() && pointer != null && (key.isPlumb() ? pointer.x < 0 : pointer.y < 0);
	}

	@Override
	protected Object moved() {
		return ((LineEditPart) getHost()).getModel().line();
	}
}
