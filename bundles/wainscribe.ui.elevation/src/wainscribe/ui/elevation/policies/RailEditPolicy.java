// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.elevation.policies;

import java.util.Optional;

import org.eclipse.draw2d.PositionConstants;

import wainscribe.commands.MoveRailCommand;
import wainscribe.layout.RailBand;
import wainscribe.model.Wall;
import wainscribe.model.length.Length;
import wainscribe.model.outline.Outline;
import wainscribe.model.outline.WallShape;
import wainscribe.ui.elevation.editparts.RailEditPart;
import wainscribe.ui.elevation.feedback.Proposal;
import wainscribe.ui.elevation.snapping.EdgeShift;
import wainscribe.ui.elevation.snapping.Pull;
import wainscribe.ui.elevation.snapping.Snapper;
import wainscribe.ui.elevation.words.DragNotes;

/** Moves the rail of the room up and down. */
public final class RailEditPolicy extends LiveDragEditPolicy {

	/** Creates the policy; a rail is moved, its face is a number of the brief. */
	public RailEditPolicy() {
		setResizeDirections(PositionConstants.NONE);
	}

	@Override
	protected Optional<Proposal> propose(EdgeShift shift, Pull pull) {
		Wall wall = thing().wall();
		EdgeShift plumb = shift.plumbOnly();
		return ((RailEditPart) getHost()).rail().filter(rail -> committed().isPresent()).map(rail -> {
			Outline before = outline(committed().orElseThrow(), wall);
			Snapper.Result snapped = snapped(before, plumb, pull);
			Outline after = snapped.shift().applyTo(before);
			Length top = after.y1().max(after.height());
			return new Proposal(new MoveRailCommand(table().session().room(), top), wall, covered(wall, before, top), null,
					snapped.level(),
					design -> DragNotes.rail(design, wall, top, table().units()));
		});
	}

	/** Returns the rail before the drag: what is shown may be a trial. */
	private Optional<RailBand> committed() {
		return table().session().design().layout().rail();
	}

	private static Outline outline(RailBand rail, Wall wall) {
		return new Outline(Length.ZERO, rail.bottom(), WallShape.of(wall).length(), rail.top());
	}

	/** Returns what the rail covers; on stairs it climbs. */
	private static Outline covered(Wall wall, Outline band, Length top) {
		Length climb = WallShape.of(wall).floorRight();
		return new Outline(band.x0(), top.minus(band.height()).plus(climb.min(Length.ZERO)), band.x1(),
				top.plus(climb.max(Length.ZERO)));
	}

	@Override
	protected Object moved() {
		return committed().orElse(null);
	}
}
