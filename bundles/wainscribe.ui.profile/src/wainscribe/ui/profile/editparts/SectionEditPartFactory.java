// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.profile.editparts;

import java.util.Objects;

import org.eclipse.gef.EditPart;
import org.eclipse.gef.EditPartFactory;

import wainscribe.ui.profile.desk.NodeKey;
import wainscribe.ui.profile.desk.ProfileDesk;
import wainscribe.ui.profile.session.ProfileSession;

/** Makes the parts of a desk. */
public final class SectionEditPartFactory implements EditPartFactory {

	private final ProfileDesk desk;

	/** Creates the factory of a desk. */
	public SectionEditPartFactory(ProfileDesk desk) {
		this.desk = Objects.requireNonNull(desk);
	}

	@Override
	public EditPart createEditPart(EditPart context, Object model) {
		return switch (model) {
			case ProfileSession session -> new SectionEditPart(desk);
			case NodeKey.OfPoint point -> new PointEditPart(desk, point);
			case NodeKey.OfSegment segment -> new SegmentEditPart(desk, segment);
			case NodeKey.OfHandle handle -> new HandleEditPart(desk, handle);
			default -> throw new IllegalArgumentException("nothing shows this on a desk: " + model); //$NON-NLS-1$
		};
	}
}
