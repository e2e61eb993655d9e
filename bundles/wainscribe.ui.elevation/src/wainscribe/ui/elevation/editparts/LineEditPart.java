// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.elevation.editparts;

import java.util.Objects;
import java.util.Optional;

import org.eclipse.draw2d.geometry.Rectangle;
import org.eclipse.gef.EditPolicy;
import org.eclipse.osgi.util.NLS;

import wainscribe.commands.ElementWords;
import wainscribe.model.Wall;
import wainscribe.model.length.Length;
import wainscribe.model.length.LengthFormat;
import wainscribe.model.outline.Outline;
import wainscribe.model.outline.WallShape;
import wainscribe.ui.drafting.appearance.Appearance;
import wainscribe.ui.elevation.Messages;
import wainscribe.ui.elevation.figures.LineFigure;
import wainscribe.ui.elevation.figures.OutlineFigure;
import wainscribe.ui.elevation.policies.LineEditPolicy;
import wainscribe.ui.elevation.policies.RemoveLineEditPolicy;
import wainscribe.ui.elevation.table.DrawingTable;
import wainscribe.ui.elevation.table.LineKey;
import wainscribe.ui.elevation.words.AxisText;

/** A marked axis or a guide. It is dragged across, its number typed, and it goes back into the ruler it came from. */
public final class LineEditPart extends ThingEditPart {

	/** Creates the part. */
	public LineEditPart(DrawingTable table, LineKey key) {
		super(table, key);
	}

	/** Returns which line it is. */
	@Override
	public LineKey getModel() {
		return (LineKey) super.getModel();
	}

	@Override
	public Wall wall() {
		return getModel().wall();
	}

	/** Returns where the line lies. */
	public Length at() {
		return Objects.requireNonNullElse(getModel().line().getAt(), Length.ZERO);
	}

	/** A line has no breadth. */
	@Override
	public Optional<Outline> outline() {
		WallShape shape = WallShape.of(wall());
		return Optional.of(getModel().isPlumb() ? new Outline(at(), Length.ZERO, at(), shape.ceilingAt(at()).max(Length.ZERO))
				: new Outline(Length.ZERO, at(), shape.length(), at()));
	}

	@Override
	protected OutlineFigure createOutline() {
		return new LineFigure(getModel().isPlumb(), getModel().isAxis(), table().letters().ofSize(LinePlaces.NOTE));
	}

	@Override
	protected void refreshVisuals() {
		LineFigure figure = (LineFigure) getFigure();
		LinePlaces places = new LinePlaces(table(), wall());
		figure.setColours(Appearance.colour(getModel().isAxis() ? table().colours().rulerInk() : table().colours().guide()),
				Appearance.colour(table().colours().ruler()));
		figure.setNote(getModel().isAxis()
				? places.noteOr(AxisText.note(AxisText.fits(table().design(), wall(), at()), table().units())) : "", //$NON-NLS-1$
				places.noteRow(at()));
		super.refreshVisuals();
	}

	/** It is seen a little beyond the wall on both sides. */
	@Override
	protected Optional<Rectangle> place() {
		LinePlaces places = new LinePlaces(table(), wall());
		int reach = ((LineFigure) getFigure()).reach();
		return Optional.of(getModel().isPlumb() ? places.plumb(at(), reach) : places.level(at(), reach));
	}

	@Override
	public String name() {
		String word = ElementWords.of(getModel().line());
		String name = getModel().line().getName();
		return name == null || name.isBlank() ? word : NLS.bind(Messages.ElementText_NamedThing, word, name);
	}

	@Override
	public String value() {
		if (getModel().isAxis()) {
			return AxisText.value(AxisText.fits(table().design(), wall(), at()), at(), table().units());
		}
		return NLS.bind(getModel().isPlumb() ? Messages.LineEditPart_FromLeft : Messages.LineEditPart_AboveFloor,
				LengthFormat.asShown(at(), table().units()));
	}

	@Override
	public boolean isCalled(String word) {
		return word.equals(getModel().line().getName()) || word.equals(getModel().line().getId());
	}

	@Override
	protected Object adapted() {
		return getModel().line();
	}

	@Override
	protected void createEditPolicies() {
		super.createEditPolicies();
		installEditPolicy(EditPolicy.PRIMARY_DRAG_ROLE, new LineEditPolicy());
		installEditPolicy(EditPolicy.COMPONENT_ROLE, new RemoveLineEditPolicy());
	}
}
