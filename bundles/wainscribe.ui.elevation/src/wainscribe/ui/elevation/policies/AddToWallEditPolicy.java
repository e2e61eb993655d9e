// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.elevation.policies;

import java.util.Optional;

import org.eclipse.draw2d.geometry.Point;
import org.eclipse.gef.EditPart;
import org.eclipse.gef.LayerConstants;
import org.eclipse.gef.Request;
import org.eclipse.gef.RequestConstants;
import org.eclipse.gef.commands.Command;
import org.eclipse.gef.editpolicies.GraphicalEditPolicy;
import org.eclipse.gef.requests.CreateRequest;

import wainscribe.commands.AddElementCommand;
import wainscribe.model.Placed;
import wainscribe.model.length.Length;
import wainscribe.model.outline.Outline;
import wainscribe.model.outline.Outlines;
import wainscribe.model.outline.WallShape;
import wainscribe.ui.elevation.editparts.WallEditPart;
import wainscribe.ui.elevation.feedback.DragFeedback;
import wainscribe.ui.elevation.feedback.Proposal;
import wainscribe.ui.drafting.history.ModelCommand;
import wainscribe.ui.elevation.snapping.EdgeShift;
import wainscribe.ui.elevation.snapping.SnapLines;
import wainscribe.ui.elevation.snapping.Snapper;
import wainscribe.ui.elevation.snapping.TableLines;
import wainscribe.ui.elevation.table.Projection;
import wainscribe.ui.elevation.words.DragNotes;

/** Puts a new thing on a wall, its middle where the pointer is, and shows beforehand what the room makes of it. */
public final class AddToWallEditPolicy extends GraphicalEditPolicy {

	private static final int REACH = 7;

	private DragFeedback feedback;

	@Override
	public EditPart getTargetEditPart(Request request) {
		return isCreation(request) ? getHost() : null;
	}

	@Override
	public Command getCommand(Request request) {
		return isCreation(request) ? new ModelCommand(proposal((CreateRequest) request).command()) : null;
	}

	@Override
	public void showTargetFeedback(Request request) {
		if (isCreation(request)) {
			if (feedback == null) {
				feedback = new DragFeedback(wall().table(), getLayer(LayerConstants.FEEDBACK_LAYER), true);
			}
			feedback.show(Optional.of(proposal((CreateRequest) request)), ((CreateRequest) request).getLocation());
		}
	}

	@Override
	public void eraseTargetFeedback(Request request) {
		if (feedback != null) {
			feedback.erase();
			feedback = null;
		}
	}

	private Proposal proposal(CreateRequest request) {
		Placed element = (Placed) request.getNewObject();
		Projection place = wall().table().placeOf(wall().getModel());
		Point at = request.getLocation().getCopy();
		getHostFigure().translateToRelative(at);
		Outline size = Outline.ofSize(Length.ZERO, Length.ZERO, Outlines.of(element).width(), Outlines.of(element).height());
		EdgeShift shift = EdgeShift.moving(place.xAt(at.x).minus(size.width().dividedBy(2)),
				place.yAt(at.y).minus(size.height().dividedBy(2)));
		SnapLines lines = TableLines.of(wall().table(), wall().getModel(), element);
		Snapper.Result snapped = new Snapper(lines, place.length(REACH), wall().table().units().tapeMark())
				.snap(size, shift);
		Outline after = onWall(snapped.shift().applyTo(size));
		element.setX(after.x0());
		element.setY(after.y0());
		return new Proposal(new AddElementCommand(wall().getModel(), element), wall().getModel(), after, snapped.plumb(),
				snapped.level(), design -> DragNotes.surveyed(design, wall().getModel(), after, true, wall().table().units()));
	}

	private Outline onWall(Outline outline) {
		Length end = WallShape.of(wall().getModel()).length();
		Length x0 = outline.x0().min(end.minus(outline.width())).max(Length.ZERO);
		return Outline.ofSize(x0, outline.y0().max(Length.ZERO), outline.width(), outline.height());
	}

	private WallEditPart wall() {
		return (WallEditPart) getHost();
	}

	private static boolean isCreation(Request request) {
		return RequestConstants.REQ_CREATE.equals(request.getType()) && request instanceof CreateRequest create
				&& create.getNewObjectType() == Placed.class;
	}
}
