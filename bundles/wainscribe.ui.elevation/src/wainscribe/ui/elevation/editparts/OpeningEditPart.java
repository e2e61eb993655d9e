// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.elevation.editparts;

import org.eclipse.gef.EditPolicy;

import wainscribe.model.Opening;
import wainscribe.ui.elevation.policies.SurveyedEditPolicy;
import wainscribe.ui.elevation.table.DrawingTable;

/** A door or a window. */
public final class OpeningEditPart extends SurveyedEditPart {

	/** Creates the part. */
	public OpeningEditPart(DrawingTable table, Opening element) {
		super(table, element);
	}

	/** It can be moved along and up the wall and be given another size; the room is laid out again under the pointer. */
	@Override
	protected void createEditPolicies() {
		super.createEditPolicies();
		installEditPolicy(EditPolicy.PRIMARY_DRAG_ROLE, new SurveyedEditPolicy());
	}
}
