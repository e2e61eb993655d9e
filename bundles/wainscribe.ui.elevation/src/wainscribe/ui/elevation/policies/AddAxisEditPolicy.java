// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.elevation.policies;

import java.util.List;
import java.util.Optional;

import org.eclipse.draw2d.geometry.Point;
import org.eclipse.gef.EditPart;
import org.eclipse.gef.LayerConstants;
import org.eclipse.gef.Request;
import org.eclipse.gef.RequestConstants;
import org.eclipse.gef.commands.Command;
import org.eclipse.gef.editpolicies.GraphicalEditPolicy;
import org.eclipse.gef.requests.CreateRequest;

import wainscribe.commands.AddLineCommand;
import wainscribe.model.Axis;
import wainscribe.model.length.Length;
import wainscribe.model.outline.Outline;
import wainscribe.model.outline.WallShape;
import wainscribe.ui.drafting.history.ModelCommand;
import wainscribe.ui.elevation.editparts.WallEditPart;
import wainscribe.ui.elevation.feedback.DragFeedback;
import wainscribe.ui.elevation.feedback.Proposal;
import wainscribe.ui.elevation.snapping.Snap;
import wainscribe.ui.elevation.snapping.TableLines;
import wainscribe.ui.elevation.table.DrawingTable;
import wainscribe.ui.elevation.table.LineKey;
import wainscribe.ui.elevation.table.Projection;
import wainscribe.ui.elevation.words.DragNotes;

/** Marks an axis on a wall where the pointer is, drawn to what is near, and says beforehand what lies centred on it. */
public final class AddAxisEditPolicy extends GraphicalEditPolicy {

	/** Role under which the policy is installed. */
	public static final Object ROLE = "wainscribe.axis"; //$NON-NLS-1$

	private static final int REACH = 7;

	private DragFeedback feedback;

	@Override
	public EditPart getTargetEditPart(Request request) {
		return isAxis(request) ? getHost() : null;
	}

	@Override
	public Command getCommand(Request request) {
		return isAxis(request) ? new ModelCommand(proposal((CreateRequest) request).command()) : null;
	}

	@Override
	public void showTargetFeedback(Request request) {
		if (isAxis(request)) {
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
		DrawingTable table = wall().table();
		Axis axis = (Axis) request.getNewObject();
		Projection place = table.placeOf(wall().getModel());
		Point pointer = request.getLocation().getCopy();
		getHostFigure().translateToRelative(pointer);
		WallShape shape = WallShape.of(wall().getModel());
		Length wished = place.xAt(pointer.x).max(Length.ZERO).min(shape.length());
		Optional<Snap> snap = Snap.nearest(List.of(wished), TableLines.of(table, wall().getModel(), axis).plumb(),
				place.length(REACH));
		Length at = snap.map(found -> wished.plus(found.correction()))
				.orElseGet(() -> wished.roundedTo(table.units().tapeMark()).min(shape.length()));
		axis.setAt(at);
		Outline outline = new Outline(at, Length.ZERO, at, shape.ceilingAt(at).max(Length.ZERO));
		return new Proposal(AddLineCommand.axis(wall().getModel(), axis), wall().getModel(), outline,
				snap.map(Snap::line).orElse(null), null,
				design -> DragNotes.line(design, new LineKey(wall().getModel(), axis), at, table.units()));
	}

	private WallEditPart wall() {
		return (WallEditPart) getHost();
	}

	private static boolean isAxis(Request request) {
		return RequestConstants.REQ_CREATE.equals(request.getType()) && request instanceof CreateRequest create
				&& create.getNewObjectType() == Axis.class;
	}
}
