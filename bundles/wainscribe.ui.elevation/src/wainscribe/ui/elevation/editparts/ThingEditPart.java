// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.elevation.editparts;

import java.util.Objects;
import java.util.Optional;

import org.eclipse.draw2d.IFigure;
import org.eclipse.draw2d.geometry.Rectangle;
import org.eclipse.gef.AccessibleEditPart;
import org.eclipse.gef.DragTracker;
import org.eclipse.gef.Request;
import org.eclipse.gef.RequestConstants;
import org.eclipse.gef.editparts.AbstractGraphicalEditPart;
import org.eclipse.swt.accessibility.AccessibleControlEvent;
import org.eclipse.swt.accessibility.AccessibleEvent;

import wainscribe.model.Wall;
import wainscribe.model.outline.Outline;
import wainscribe.ui.drafting.appearance.Appearance;
import wainscribe.ui.elevation.directedit.DimensionEdit;
import wainscribe.ui.elevation.figures.OutlineFigure;
import wainscribe.ui.elevation.policies.PointedAtEditPolicy;
import wainscribe.ui.elevation.table.DrawingTable;
import wainscribe.ui.elevation.tools.ThingTracker;

/** Anything on a wall that can be pointed at. The wall's drawing paints it; this gives it a place, a name and behaviour. */
public abstract class ThingEditPart extends AbstractGraphicalEditPart {

	private final DrawingTable table;
	private AccessibleEditPart accessible;

	/**
	 * Creates a part.
	 *
	 * @param table the drawing table it lies on
	 * @param model what it stands for
	 */
	protected ThingEditPart(DrawingTable table, Object model) {
		this.table = Objects.requireNonNull(table);
		setModel(model);
	}

	/** Returns the wall the thing is on. */
	public abstract Wall wall();

	/** Returns where the thing is, as shown now; empty when the shown design has it no more. */
	public abstract Optional<Outline> outline();

	/** Returns what the thing is called, for people. */
	public abstract String name();

	/** Returns its numbers as a sentence, for people who listen to the screen. */
	public abstract String value();

	/** Returns what findings call it: name or id of a surveyed thing, id of a frame, {@code rail}. */
	public abstract boolean isCalled(String word);

	/** Returns the drawing table it lies on. */
	public final DrawingTable table() {
		return table;
	}

	@Override
	protected final IFigure createFigure() {
		return createOutline();
	}

	/** Makes the figure; things that the drawing does not paint paint themselves. */
	protected OutlineFigure createOutline() {
		return new OutlineFigure();
	}

	@Override
	public OutlineFigure getFigure() {
		return (OutlineFigure) super.getFigure();
	}

	/** The pointer over a thing tints it. What else a thing can do, its own class adds. */
	@Override
	protected void createEditPolicies() {
		installEditPolicy(PointedAtEditPolicy.ROLE, new PointedAtEditPolicy());
	}

	@Override
	protected void refreshVisuals() {
		getFigure().setTint(Appearance.colour(table.colours().hover()));
		place().ifPresent(getFigure()::setPlace);
	}

	/** Returns the pixels that the thing covers. */
	protected Optional<Rectangle> place() {
		return outline().map(table.placeOf(wall())::pixels);
	}

	@Override
	public DragTracker getDragTracker(Request request) {
		return new ThingTracker(this);
	}

	/** Clicked twice, the first number of a thing can be typed. */
	@Override
	public void performRequest(Request request) {
		if (RequestConstants.REQ_OPEN.equals(request.getType())) {
			DimensionEdit.of(this).ifPresent(DimensionEdit::open);
		}
	}

	@Override
	protected AccessibleEditPart getAccessibleEditPart() {
		if (accessible == null) {
			accessible = new AccessibleThing();
		}
		return accessible;
	}

	@Override
	public Object getAdapter(@SuppressWarnings("rawtypes") Class key) {
		if (key == AccessibleEditPart.class) {
			return getAccessibleEditPart();
		}
		return key.isInstance(adapted()) ? adapted() : super.getAdapter(key);
	}

	/** Returns what views beside the editor show of the thing. */
	protected Object adapted() {
		return getModel();
	}

	/** Tells screen readers what is here. */
	private final class AccessibleThing extends AccessibleGraphicalEditPart {

		@Override
		public void getName(AccessibleEvent event) {
			event.result = name();
		}

		@Override
		public void getDescription(AccessibleEvent event) {
			event.result = value();
		}

		@Override
		public void getValue(AccessibleControlEvent event) {
			event.result = value();
		}
	}
}
