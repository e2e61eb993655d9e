// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.elevation.policies;

import java.util.List;

import org.eclipse.draw2d.IFigure;
import org.eclipse.draw2d.PositionConstants;
import org.eclipse.gef.GraphicalEditPart;
import org.eclipse.gef.editpolicies.NonResizableEditPolicy;

import wainscribe.ui.elevation.editparts.ThingEditPart;
import wainscribe.ui.elevation.figures.TableHandles;

/** Shows that a thing is selected, and keeps it where it is. */
public final class SelectOnlyEditPolicy extends NonResizableEditPolicy {

	/** Creates the policy. */
	public SelectOnlyEditPolicy() {
		setDragAllowed(false);
	}

	@Override
	protected List<IFigure> createSelectionHandles() {
		return TableHandles.of((GraphicalEditPart) getHost(), ((ThingEditPart) getHost()).table().colours(),
				PositionConstants.NONE);
	}

	/** What has the keyboard's attention is what is selected first: no further mark. */
	@Override
	protected void showFocus() {
		// see above
	}
}
