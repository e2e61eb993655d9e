// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.elevation.policies;

import java.util.List;
import java.util.Optional;

import org.eclipse.draw2d.IFigure;

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

/** Moves and sizes what was surveyed: a box, a fixture, a door or window, a stud, old trim. It stays on its wall. */
public final class SurveyedEditPolicy extends LiveDragEditPolicy {

	@Override
	protected Optional<Proposal> propose(EdgeShift shift, Pull pull) {
		Placed element = (Placed) getHost().getModel();
		return thing().outline().map(outline -> {
			Snapper.Result snapped = snapped(outline, Freedom.of(element).kept(shift), pull);
			EdgeShift done = snapped.shift();
			Outline after = onWall(done.applyTo(outline), done.isMove());
			return new Proposal(command(element, outline, after, done.isMove()), thing().wall(), after, snapped.plumb(),
					snapped.level(),
					design -> DragNotes.surveyed(design, thing().wall(), after, done.isMove(), table().units()));
		});
	}

	/** What the wall keeps follows what is seen: along a slope the two are not the same. */
	private static EditCommand command(Placed element, Outline before, Outline after, boolean move) {
		Outline kept = Freedom.of(element).measured();
		Outline changed = new Outline(kept.x0().plus(after.x0().minus(before.x0())),
				kept.y0().plus(after.y0().minus(before.y0())), kept.x1().plus(after.x1().minus(before.x1())),
				kept.y1().plus(after.y1().minus(before.y1())));
		return move ? new MoveElementCommand(element, changed.x0(), changed.y0()) : new ResizeElementCommand(element, changed);
	}

	/** What was not measured has no edge to take hold of. */
	@Override
	protected List<IFigure> createSelectionHandles() {
		setResizeDirections(Freedom.of((Placed) getHost().getModel()).edges());
		return super.createSelectionHandles();
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
