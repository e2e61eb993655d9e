// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.profile.policies;

import java.util.List;

import org.eclipse.draw2d.geometry.Point;
import org.eclipse.gef.EditPart;
import org.eclipse.gef.LayerConstants;
import org.eclipse.gef.Request;
import org.eclipse.gef.RequestConstants;
import org.eclipse.gef.commands.Command;
import org.eclipse.gef.editpolicies.SelectionEditPolicy;
import org.eclipse.gef.requests.ChangeBoundsRequest;

import wainscribe.model.length.Length;
import wainscribe.profile.section.ProfileSection;
import wainscribe.profile.section.SectionPoint;
import wainscribe.ui.drafting.history.ModelCommand;
import wainscribe.ui.profile.Messages;
import wainscribe.ui.profile.desk.NodeKey;
import wainscribe.ui.profile.desk.Plane;
import wainscribe.ui.profile.desk.ProfileDesk;
import wainscribe.ui.profile.desk.SectionNodes;
import wainscribe.ui.profile.editparts.NodeEditPart;
import wainscribe.ui.profile.feedback.MoveFeedback;
import wainscribe.ui.profile.snapping.NodeSnap;
import wainscribe.ui.profile.snapping.PointSnap;
import wainscribe.ui.profile.words.NodeWords;

/**
 * Shows what is selected and pointed at, and turns the drag of a node into the section it would leave behind. What is
 * selected with it goes along.
 */
public final class DragNodeEditPolicy extends SelectionEditPolicy {

	private MoveFeedback feedback;

	private NodeEditPart node() {
		return (NodeEditPart) getHost();
	}

	private ProfileDesk desk() {
		return node().desk();
	}

	@Override
	public boolean understandsRequest(Request request) {
		return RequestConstants.REQ_MOVE.equals(request.getType());
	}

	@Override
	public Command getCommand(Request request) {
		if (!understandsRequest(request) || !isHeld(request)) {
			return null;
		}
		ProfileSection after = after((ChangeBoundsRequest) request, snapped((ChangeBoundsRequest) request));
		return new ModelCommand(desk().session().drawing(label(), after));
	}

	@Override
	public void showSourceFeedback(Request request) {
		if (understandsRequest(request) && isHeld(request)) {
			if (feedback == null) {
				feedback = new MoveFeedback(desk(), getLayer(LayerConstants.FEEDBACK_LAYER));
			}
			PointSnap.Result snapped = snapped((ChangeBoundsRequest) request);
			desk().session().tryOut(after((ChangeBoundsRequest) request, snapped));
			feedback.show(snapped, NodeWords.moving(snapped.point(), place(), desk().session().units()));
		}
	}

	@Override
	public void eraseSourceFeedback(Request request) {
		if (understandsRequest(request) && feedback != null) {
			feedback.erase();
			feedback = null;
			desk().session().endTrial();
		}
	}

	@Override
	public void showTargetFeedback(Request request) {
		if (RequestConstants.REQ_SELECTION.equals(request.getType())) {
			node().getFigure().setHovered(true);
		}
	}

	@Override
	public void eraseTargetFeedback(Request request) {
		if (RequestConstants.REQ_SELECTION.equals(request.getType())) {
			node().getFigure().setHovered(false);
		}
	}

	@Override
	protected void showSelection() {
		node().getFigure().setSelected(true);
	}

	@Override
	protected void hideSelection() {
		node().getFigure().setSelected(false);
	}

	/** Of all that is dragged together only what is held has a say. */
	private boolean isHeld(Request request) {
		return NodeDrag.held(request) == getHost();
	}

	private SectionNodes before() {
		return new SectionNodes(desk().session().draft().section());
	}

	private SectionPoint place() {
		return before().placeOf(node().key()).orElseThrow();
	}

	private PointSnap.Result snapped(ChangeBoundsRequest request) {
		Plane plane = desk().plane();
		Point delta = request.getMoveDelta();
		SectionPoint pointed = place().moved(plane.length(-delta.y), plane.length(delta.x));
		return NodeSnap.of(desk(), before(), node().key(), keys(request), NodeDrag.isFree(request)).snap(pointed);
	}

	private ProfileSection after(ChangeBoundsRequest request, PointSnap.Result snapped) {
		Length up = snapped.point().x().minus(place().x());
		Length out = snapped.point().y().minus(place().y());
		return before().moved(keys(request), up, out);
	}

	private static List<NodeKey> keys(ChangeBoundsRequest request) {
		return ((List<?>) request.getEditParts()).stream().map(part -> (NodeKey) ((EditPart) part).getModel()).toList();
	}

	private String label() {
		return switch (node().key()) {
			case NodeKey.OfPoint point -> Messages.DragNodeEditPolicy_Point;
			case NodeKey.OfSegment segment -> Messages.DragNodeEditPolicy_Segment;
			case NodeKey.OfHandle handle -> Messages.DragNodeEditPolicy_Handle;
		};
	}
}
