// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.elevation.gaps;

import java.util.Optional;

import org.eclipse.draw2d.Cursors;
import org.eclipse.draw2d.geometry.Point;
import org.eclipse.gef.EditPart;
import org.eclipse.gef.LayerConstants;
import org.eclipse.gef.Request;
import org.eclipse.gef.RequestConstants;
import org.eclipse.gef.editpolicies.GraphicalEditPolicy;
import org.eclipse.gef.requests.LocationRequest;

import wainscribe.ui.drafting.appearance.Appearance;
import wainscribe.ui.elevation.editparts.WallEditPart;
import wainscribe.ui.elevation.table.DrawingTable;
import wainscribe.ui.elevation.table.Projection;

/** Shows on a wall that the gap under the pointer can be dragged. */
public final class GapEditPolicy extends GraphicalEditPolicy {

	/** Role under which the policy is installed. */
	public static final Object ROLE = "wainscribe.gap"; //$NON-NLS-1$

	private GapMark mark;
	private GapSpot shown;

	/** Finds the gap that a request points at. */
	public static Optional<GapSpot> spot(WallEditPart wall, Request request) {
		return request instanceof LocationRequest at && at.getLocation() != null ? spot(wall, at.getLocation()) : Optional.empty();
	}

	private static Optional<GapSpot> spot(WallEditPart wall, Point location) {
		Point point = location.getCopy();
		wall.getFigure().translateToRelative(point);
		DrawingTable table = wall.table();
		Projection place = table.placeOf(wall.getModel());
		return GapSpots.at(table.session().design(), wall.getModel(), place.xAt(point.x), place.yAt(point.y));
	}

	@Override
	public EditPart getTargetEditPart(Request request) {
		return RequestConstants.REQ_SELECTION.equals(request.getType()) ? getHost() : null;
	}

	@Override
	public void showTargetFeedback(Request request) {
		if (RequestConstants.REQ_SELECTION.equals(request.getType())) {
			WallEditPart wall = (WallEditPart) getHost();
			GapSpot spot = spot(wall, request).orElse(null);
			if (spot == null || !spot.equals(shown)) {
				erase();
			}
			if (spot != null && mark == null) {
				show(wall, spot);
			}
		}
	}

	@Override
	public void eraseTargetFeedback(Request request) {
		erase();
	}

	@Override
	public void deactivate() {
		erase();
		super.deactivate();
	}

	private void show(WallEditPart wall, GapSpot spot) {
		DrawingTable table = wall.table();
		mark = new GapMark(Appearance.colour(table.colours().select()), Appearance.colour(table.colours().hover()));
		mark.setBounds(table.placeOf(spot.wall()).pixels(spot.area()));
		getLayer(LayerConstants.FEEDBACK_LAYER).add(mark);
		wall.getFigure().setCursor(spot.upright() ? Cursors.SIZENS : Cursors.SIZEWE);
		shown = spot;
	}

	private void erase() {
		if (mark != null) {
			getLayer(LayerConstants.FEEDBACK_LAYER).remove(mark);
			getHostFigure().setCursor(null);
			mark = null;
			shown = null;
		}
	}
}
