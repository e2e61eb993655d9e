// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.profile.editparts;

import java.util.List;

import org.eclipse.draw2d.IFigure;
import org.eclipse.draw2d.geometry.Point;
import org.eclipse.gef.EditPart;
import org.eclipse.gef.Request;
import org.eclipse.gef.RequestConstants;
import org.eclipse.gef.requests.LocationRequest;

import wainscribe.profile.section.Segment;
import wainscribe.ui.profile.desk.NodeKey;
import wainscribe.ui.profile.desk.ProfileDesk;
import wainscribe.ui.profile.desk.SectionNodes;
import wainscribe.ui.profile.figures.CourseFigure;

/** A line, an arc or a curve of the outline. */
public final class SegmentEditPart extends NodeEditPart {

	/** Creates the part. */
	public SegmentEditPart(ProfileDesk desk, NodeKey.OfSegment key) {
		super(desk, key);
	}

	@Override
	protected IFigure createFigure() {
		return new CourseFigure();
	}

	@Override
	protected void place(SectionNodes nodes) {
		nodes.segment(((NodeKey.OfSegment) key()).segment()).ifPresent(segment -> ((CourseFigure) getFigure()).place(pixels(segment)));
	}

	/** A frame drawn round a part of the section means the points in it; only the pointer asks with its place. */
	@Override
	public EditPart getTargetEditPart(Request request) {
		boolean framed = RequestConstants.REQ_SELECTION.equals(request.getType()) && !(request instanceof LocationRequest);
		return framed ? null : super.getTargetEditPart(request);
	}

	private List<Point> pixels(Segment segment) {
		return DeskView.course(desk(), segment).stream()
				.map(point -> new Point((int) Math.round(point.x()), (int) Math.round(point.y()))).toList();
	}
}
