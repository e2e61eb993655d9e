// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.elevation.editparts;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Set;

import org.eclipse.draw2d.IFigure;
import org.eclipse.gef.AccessibleEditPart;
import org.eclipse.gef.DragTracker;
import org.eclipse.gef.EditPolicy;
import org.eclipse.gef.Request;
import org.eclipse.gef.RequestConstants;
import org.eclipse.gef.editparts.AbstractGraphicalEditPart;
import org.eclipse.gef.requests.LocationRequest;
import org.eclipse.swt.accessibility.AccessibleControlEvent;
import org.eclipse.swt.accessibility.AccessibleEvent;

import wainscribe.drawing.LayerName;
import wainscribe.model.Wall;
import wainscribe.ui.elevation.directedit.DimensionEdit;
import wainscribe.ui.elevation.figures.DrawingFigure;
import wainscribe.ui.elevation.gaps.GapEditPolicy;
import wainscribe.ui.elevation.gaps.GapTracker;
import wainscribe.ui.elevation.policies.AddAxisEditPolicy;
import wainscribe.ui.elevation.policies.AddToWallEditPolicy;
import wainscribe.ui.elevation.policies.SelectWallEditPolicy;
import wainscribe.ui.elevation.table.CentreKey;
import wainscribe.ui.elevation.table.DrawingTable;
import wainscribe.ui.elevation.table.FrameKey;
import wainscribe.ui.elevation.table.LineKey;
import wainscribe.ui.elevation.table.RailKey;
import wainscribe.ui.elevation.table.StripKey;
import wainscribe.ui.elevation.tools.WallMarquee;
import wainscribe.ui.elevation.words.ElementText;

/** A wall: shows its drawing, and holds what can be pointed at on it. */
public final class WallEditPart extends AbstractGraphicalEditPart {

	private final DrawingTable table;
	private AccessibleEditPart accessible;

	/** Creates the part. */
	public WallEditPart(DrawingTable table, Wall wall) {
		this.table = Objects.requireNonNull(table);
		setModel(wall);
	}

	/** Returns the wall. */
	@Override
	public Wall getModel() {
		return (Wall) super.getModel();
	}

	/** Returns the drawing table it lies on. */
	public DrawingTable table() {
		return table;
	}

	@Override
	protected IFigure createFigure() {
		return new DrawingFigure(table.letters(), DrawingTable.PAPER);
	}

	@Override
	public DrawingFigure getFigure() {
		return (DrawingFigure) super.getFigure();
	}

	/** Returns what is on the wall. */
	public List<ThingEditPart> things() {
		List<ThingEditPart> things = new ArrayList<>();
		for (Object child : getChildren()) {
			things.add((ThingEditPart) child);
		}
		return things;
	}

	/** Later ones lie over earlier ones: small things can always be hit, and what is in the wall where nothing is on it. */
	@Override
	protected List<Object> getModelChildren() {
		Wall wall = getModel();
		List<Object> things = new ArrayList<>(wall.getTrims());
		if (table.shows(Set.of(LayerName.SERVICE))) {
			things.addAll(wall.getServices());
		}
		table.design().layout().rail().ifPresent(rail -> things.add(new RailKey(wall)));
		things.addAll(FrameKey.of(table.design(), wall));
		things.addAll(StripKey.of(table.design(), wall));
		things.addAll(wall.getOpenings());
		things.addAll(wall.getFixtures());
		things.addAll(wall.getBoxes());
		things.addAll(CentreKey.of(table.design(), wall, table.overlays()));
		things.addAll(LineKey.of(wall, table.overlays()));
		return things;
	}

	@Override
	protected void refreshVisuals() {
		getFigure().show(table.drawingOf(getModel()), table.placeOf(getModel()), table.styles());
	}

	/** Follows the table: the drawing, what is on the wall, and where it is. */
	public void follow() {
		refresh();
		things().forEach(ThingEditPart::refresh);
	}

	/** Shows a trial; what can be pointed at stays, so that a drag goes on, but moves along. */
	public void followTrial() {
		// an equal drawing is the same one: nothing on the wall has moved
		if (!getFigure().shows(table.drawingOf(getModel()))) {
			refreshVisuals();
			things().forEach(ThingEditPart::refreshVisuals);
		}
	}

	/** New things are put on a wall; a selected wall shows it; the gaps on it can be dragged. */
	@Override
	protected void createEditPolicies() {
		installEditPolicy(EditPolicy.LAYOUT_ROLE, new AddToWallEditPolicy());
		installEditPolicy(AddAxisEditPolicy.ROLE, new AddAxisEditPolicy());
		installEditPolicy(EditPolicy.PRIMARY_DRAG_ROLE, new SelectWallEditPolicy());
		installEditPolicy(GapEditPolicy.ROLE, new GapEditPolicy());
	}

	/** A number on the drawing that is clicked twice can be typed. */
	@Override
	public void performRequest(Request request) {
		if (RequestConstants.REQ_OPEN.equals(request.getType()) && request instanceof LocationRequest at) {
			DimensionEdit.at(this, at.getLocation()).ifPresent(DimensionEdit::open);
		}
	}

	@Override
	public DragTracker getDragTracker(Request request) {
		return GapEditPolicy.spot(this, request).<DragTracker>map(spot -> new GapTracker(this, table, spot))
				.orElseGet(() -> new WallMarquee(this));
	}

	@Override
	protected AccessibleEditPart getAccessibleEditPart() {
		if (accessible == null) {
			accessible = new AccessibleWall();
		}
		return accessible;
	}

	@Override
	public Object getAdapter(@SuppressWarnings("rawtypes") Class key) {
		if (key == AccessibleEditPart.class) {
			return getAccessibleEditPart();
		}
		return key.isInstance(getModel()) ? getModel() : super.getAdapter(key);
	}

	/** Tells screen readers what is here. */
	private final class AccessibleWall extends AccessibleGraphicalEditPart {

		@Override
		public void getName(AccessibleEvent event) {
			event.result = ElementText.name(getModel());
		}

		@Override
		public void getValue(AccessibleControlEvent event) {
			event.result = ElementText.value(getModel(), table.units());
		}
	}
}
