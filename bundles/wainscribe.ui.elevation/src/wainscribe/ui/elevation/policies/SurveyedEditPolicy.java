// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.elevation.policies;

import java.util.Optional;

import wainscribe.commands.EditCommand;
import wainscribe.commands.MoveElementCommand;
import wainscribe.commands.ResizeElementCommand;
import wainscribe.model.Placed;
import wainscribe.model.length.Length;
import wainscribe.model.outline.Outline;
import wainscribe.model.outline.WallShape;
import wainscribe.ui.elevation.feedback.Proposal;
import wainscribe.ui.elevation.snapping.EdgeShift;
import wainscribe.ui.elevation.snapping.Pull;
import wainscribe.ui.elevation.snapping.Snapper;
import wainscribe.ui.elevation.words.DragNotes;

/** Moves and sizes what was surveyed: a box, a fixture, a door or window. It stays on its wall. */
public final class SurveyedEditPolicy extends LiveDragEditPolicy {

	@Override
	protected Optional<Proposal> propose(EdgeShift shift, Pull pull) {
		Placed element = (Placed) getHost().getModel();
		return thing().outline().map(outline -> {
			Snapper.Result snapped = snapped(outline, shift, pull);
			Outline after = onWall(snapped.shift().applyTo(outline), shift.isMove());
			EditCommand command = shift.isMove() ? new MoveElementCommand(element, after.x0(), after.y0())
					: new ResizeElementCommand(element, after);
			return new Proposal(command, thing().wall(), after, snapped.plumb(), snapped.level(),
					design -> DragNotes.surveyed(design, thing().wall(), after, shift.isMove(), table().units()));
		});
	}

	@Override
	protected Object moved() {
		return getHost().getModel();
	}

	private Outline onWall(Outline outline, boolean move) {
		Length end = WallShape.of(thing().wall()).length();
		Length back = Length.ZERO.max(outline.x1().minus(end)).negated();
		Length x0 = move ? outline.x0().plus(back).max(Length.ZERO) : outline.x0().max(Length.ZERO);
		Length y0 = outline.y0().max(floor(x0));
		if (move) {
			return Outline.ofSize(x0, y0, outline.width(), outline.height());
		}
		Length x1 = outline.x1().min(end).max(x0);
		return new Outline(x0, y0, x1, outline.y1().max(y0));
	}

	/** On stairs the floor line may run below the datum. */
	private Length floor(Length x) {
		return WallShape.of(thing().wall()).floorAt(x).min(Length.ZERO);
	}
}
