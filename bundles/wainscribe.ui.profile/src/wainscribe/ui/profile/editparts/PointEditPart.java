// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.profile.editparts;

import org.eclipse.draw2d.IFigure;

import wainscribe.ui.profile.desk.NodeKey;
import wainscribe.ui.profile.desk.ProfileDesk;
import wainscribe.ui.profile.desk.SectionNodes;
import wainscribe.ui.profile.figures.DotFigure;

/** A point of the outline. */
public final class PointEditPart extends NodeEditPart {

	/** Creates the part. */
	public PointEditPart(ProfileDesk desk, NodeKey.OfPoint key) {
		super(desk, key);
	}

	@Override
	protected IFigure createFigure() {
		return new DotFigure(false);
	}

	@Override
	protected void place(SectionNodes nodes) {
		nodes.placeOf(key()).ifPresent(place -> ((DotFigure) getFigure()).place(desk().plane().pixel(place.spot()), null));
	}
}
