// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.elevation.editparts;

import java.util.Optional;

import org.eclipse.gef.EditPolicy;

import wainscribe.model.ExistingTrim;
import wainscribe.model.length.Length;
import wainscribe.model.outline.Outline;
import wainscribe.model.outline.WallShape;
import wainscribe.ui.elevation.policies.SurveyedEditPolicy;
import wainscribe.ui.elevation.table.DrawingTable;

/** A moulding that is on the wall now. It is dragged when the survey was wrong about it. */
public final class ExistingTrimEditPart extends SurveyedEditPart {

	/** Creates the part. */
	public ExistingTrimEditPart(DrawingTable table, ExistingTrim element) {
		super(table, element);
	}

	/** Without a width it runs to the end of the wall; along a slope it covers what it climbs. */
	@Override
	public Optional<Outline> outline() {
		ExistingTrim trim = (ExistingTrim) getModel();
		WallShape shape = WallShape.of(wall());
		Length x = trim.getX() == null ? Length.ZERO : trim.getX();
		Length end = trim.getWidth() == null ? shape.length().max(x) : x.plus(trim.getWidth());
		Length y = trim.getY() == null ? Length.ZERO : trim.getY();
		Length top = y.plus(trim.getHeight() == null ? Length.ZERO : trim.getHeight());
		Length low = shape.floorAt(x).min(shape.floorAt(end));
		Length high = shape.floorAt(x).max(shape.floorAt(end));
		return Optional.of(new Outline(x, y.plus(low), end, top.plus(high)));
	}

	/** It can be moved and sized as far as it was measured; the room is laid out again under the pointer. */
	@Override
	protected void createEditPolicies() {
		super.createEditPolicies();
		installEditPolicy(EditPolicy.PRIMARY_DRAG_ROLE, new SurveyedEditPolicy());
	}
}
