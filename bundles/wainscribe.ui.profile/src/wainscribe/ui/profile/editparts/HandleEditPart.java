// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.profile.editparts;

import java.util.Optional;

import org.eclipse.draw2d.IFigure;
import org.eclipse.draw2d.geometry.Point;
import org.eclipse.gef.EditPart;
import org.eclipse.gef.Request;

import wainscribe.profile.section.Segment;
import wainscribe.ui.profile.desk.Grip;
import wainscribe.ui.profile.desk.NodeKey;
import wainscribe.ui.profile.desk.ProfileDesk;
import wainscribe.ui.profile.desk.SectionNodes;
import wainscribe.ui.profile.figures.DotFigure;

/** A handle that bends a segment. It is there while the segment, one of its ends or one of its handles is selected. */
public final class HandleEditPart extends NodeEditPart {

	/** Creates the part. */
	public HandleEditPart(ProfileDesk desk, NodeKey.OfHandle key) {
		super(desk, key);
	}

	private NodeKey.OfHandle handle() {
		return (NodeKey.OfHandle) key();
	}

	@Override
	protected IFigure createFigure() {
		return new DotFigure(true);
	}

	@Override
	protected void place(SectionNodes nodes) {
		getFigure().setVisible(isMeant(nodes));
		nodes.placeOf(key()).ifPresent(place -> ((DotFigure) getFigure()).place(desk().plane().pixel(place.spot()),
				anchor(nodes).orElse(null)));
	}

	private Optional<Point> anchor(SectionNodes nodes) {
		if (handle().grip() == Grip.MIDDLE) {
			return Optional.empty();
		}
		return nodes.segment(handle().segment()).map(handle().grip() == Grip.LEAVES ? Segment::start : Segment::end)
				.map(point -> desk().plane().pixel(point.spot()));
	}

	private boolean isMeant(SectionNodes nodes) {
		for (Object part : getViewer().getSelectedEditParts()) {
			if (isMeantBy(nodes, ((EditPart) part).getModel())) {
				return true;
			}
		}
		return false;
	}

	private boolean isMeantBy(SectionNodes nodes, Object selected) {
		return switch (selected) {
			case NodeKey.OfSegment(int segment) -> segment == handle().segment();
			case NodeKey.OfHandle(int segment, var grip) -> segment == handle().segment();
			case NodeKey.OfPoint(int point) -> nodes.endsOf(handle().segment()).contains(point);
			default -> false;
		};
	}

	/** What is not seen is not met. */
	@Override
	public EditPart getTargetEditPart(Request request) {
		return getFigure().isVisible() ? super.getTargetEditPart(request) : null;
	}
}
