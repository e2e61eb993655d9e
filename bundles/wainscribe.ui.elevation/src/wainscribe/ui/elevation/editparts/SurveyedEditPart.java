// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.elevation.editparts;

import java.util.Optional;

import org.eclipse.gef.EditPolicy;

import wainscribe.model.Placed;
import wainscribe.model.Wall;
import wainscribe.model.outline.Outline;
import wainscribe.model.outline.Outlines;
import wainscribe.ui.elevation.policies.RemoveSurveyedEditPolicy;
import wainscribe.ui.elevation.table.DrawingTable;
import wainscribe.ui.elevation.words.ElementText;

/** A thing of the survey. */
public abstract class SurveyedEditPart extends ThingEditPart {

	/**
	 * Creates a part.
	 *
	 * @param table   the drawing table it lies on
	 * @param element the thing, on a wall
	 */
	protected SurveyedEditPart(DrawingTable table, Placed element) {
		super(table, element);
	}

	/** Returns the thing. */
	@Override
	public Placed getModel() {
		return (Placed) super.getModel();
	}

	@Override
	public Wall wall() {
		return (Wall) getModel().eContainer();
	}

	@Override
	public Optional<Outline> outline() {
		return getModel().getX() == null || getModel().getY() == null ? Optional.empty() : Optional.of(Outlines.of(getModel()));
	}

	@Override
	public String name() {
		return ElementText.name(getModel());
	}

	@Override
	public String value() {
		return ElementText.value(getModel(), table().units());
	}

	@Override
	public boolean isCalled(String word) {
		return word.equals(getModel().getName()) || word.equals(getModel().getId());
	}

	/** What was surveyed can be taken off the wall. */
	@Override
	protected void createEditPolicies() {
		super.createEditPolicies();
		installEditPolicy(EditPolicy.COMPONENT_ROLE, new RemoveSurveyedEditPolicy());
	}
}
