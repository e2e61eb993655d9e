// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.elevation.editparts;

import java.util.Optional;

import org.eclipse.gef.EditPolicy;

import wainscribe.model.Service;
import wainscribe.model.length.Length;
import wainscribe.model.outline.Outline;
import wainscribe.model.outline.WallShape;
import wainscribe.ui.elevation.policies.SurveyedEditPolicy;
import wainscribe.ui.elevation.table.DrawingTable;

/** A stud, pipe or cable in the wall. It is dragged when the survey was wrong about it. */
public final class ServiceEditPart extends SurveyedEditPart {

	/** Creates the part. */
	public ServiceEditPart(DrawingTable table, Service element) {
		super(table, element);
	}

	/** Without a height it runs from floor to ceiling. */
	@Override
	public Optional<Outline> outline() {
		Service service = (Service) getModel();
		if (service.getX() == null) {
			return Optional.empty();
		}
		WallShape shape = WallShape.of(wall());
		Length width = service.getWidth() == null ? Length.ZERO : service.getWidth();
		Length y = service.getY() == null ? Length.ZERO : service.getY();
		Length top = service.getHeight() == null ? shape.ceilingAt(service.getX()).max(y) : y.plus(service.getHeight());
		return Optional.of(new Outline(service.getX(), y, service.getX().plus(width), top));
	}

	/** It can be moved and sized as far as it was measured; the room is laid out again under the pointer. */
	@Override
	protected void createEditPolicies() {
		super.createEditPolicies();
		installEditPolicy(EditPolicy.PRIMARY_DRAG_ROLE, new SurveyedEditPolicy());
	}
}
