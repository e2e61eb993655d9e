// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.elevation.editparts;

import java.util.Optional;

import org.eclipse.draw2d.geometry.Rectangle;
import org.eclipse.gef.EditPolicy;

import wainscribe.model.Wall;
import wainscribe.model.length.Length;
import wainscribe.model.outline.Outline;
import wainscribe.model.outline.WallShape;
import wainscribe.ui.drafting.appearance.Appearance;
import wainscribe.ui.elevation.figures.LineFigure;
import wainscribe.ui.elevation.figures.OutlineFigure;
import wainscribe.ui.elevation.policies.SelectOnlyEditPolicy;
import wainscribe.ui.elevation.table.CentreKey;
import wainscribe.ui.elevation.table.DrawingTable;
import wainscribe.ui.elevation.words.AxisText;

/** The axis of a door, window or fixture in the middle of its wall: it goes where the thing goes. */
public final class CentreEditPart extends ThingEditPart {

	/** Creates the part. */
	public CentreEditPart(DrawingTable table, CentreKey key) {
		super(table, key);
	}

	/** Returns which axis it is. */
	@Override
	public CentreKey getModel() {
		return (CentreKey) super.getModel();
	}

	@Override
	public Wall wall() {
		return getModel().wall();
	}

	@Override
	public Optional<Outline> outline() {
		Length at = getModel().at();
		return Optional.of(new Outline(at, Length.ZERO, at, WallShape.of(wall()).ceilingAt(at).max(Length.ZERO)));
	}

	@Override
	protected OutlineFigure createOutline() {
		LineFigure figure = new LineFigure(true, true, table().letters().ofSize(LinePlaces.NOTE));
		figure.setOnlyNote(true);
		return figure;
	}

	@Override
	protected void refreshVisuals() {
		LineFigure figure = (LineFigure) getFigure();
		figure.setColours(Appearance.colour(table().colours().rulerInk()), Appearance.colour(table().colours().ruler()));
		LinePlaces places = new LinePlaces(table(), wall());
		figure.setNote(places.noteOr(AxisText.note(AxisText.fits(table().design(), wall(), getModel().at()), table().units())),
				places.noteRow(getModel().at()));
		super.refreshVisuals();
	}

	@Override
	protected Optional<Rectangle> place() {
		return Optional.of(new LinePlaces(table(), wall()).plumb(getModel().at(), ((LineFigure) getFigure()).reach()));
	}

	@Override
	public String name() {
		return getModel().name();
	}

	@Override
	public String value() {
		return AxisText.value(AxisText.fits(table().design(), wall(), getModel().at()), getModel().at(), table().units());
	}

	/** Findings speak of the thing, not of its axis. */
	@Override
	public boolean isCalled(String word) {
		return false;
	}

	/** It shows that it is selected. */
	@Override
	protected void createEditPolicies() {
		super.createEditPolicies();
		installEditPolicy(EditPolicy.PRIMARY_DRAG_ROLE, new SelectOnlyEditPolicy());
	}
}
