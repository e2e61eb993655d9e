// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.elevation.editparts;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Consumer;

import org.eclipse.draw2d.IFigure;
import org.eclipse.gef.DragTracker;
import org.eclipse.gef.EditPolicy;
import org.eclipse.gef.Request;
import org.eclipse.gef.editparts.AbstractGraphicalEditPart;
import org.eclipse.gef.editpolicies.RootComponentEditPolicy;
import org.eclipse.gef.tools.DeselectAllTracker;

import wainscribe.model.Room;
import wainscribe.model.Wall;
import wainscribe.ui.elevation.figures.StripLayer;
import wainscribe.ui.elevation.table.DrawingTable;
import wainscribe.ui.elevation.table.TableListener;

/** The room: its walls side by side in walking order. Hears from the drawing table and tells the walls. */
public final class RoomEditPart extends AbstractGraphicalEditPart implements TableListener {

	private final DrawingTable table;

	/** Creates the part. */
	public RoomEditPart(DrawingTable table, Room room) {
		this.table = Objects.requireNonNull(table);
		setModel(room);
	}

	@Override
	public void activate() {
		if (!isActive()) {
			super.activate();
			table.addListener(this);
		}
	}

	@Override
	public void deactivate() {
		if (isActive()) {
			table.removeListener(this);
			super.deactivate();
		}
	}

	@Override
	public void drawingsChanged() {
		refreshChildren();
		walls(WallEditPart::follow);
		((StripLayer) getFigure()).fireExtentChanged();
	}

	@Override
	public void trialShown() {
		walls(WallEditPart::followTrial);
	}

	/** Finds the part of a wall. */
	public Optional<WallEditPart> partOf(Wall wall) {
		return Optional.ofNullable((WallEditPart) getViewer().getEditPartRegistry().get(wall));
	}

	private void walls(Consumer<WallEditPart> task) {
		for (Object child : getChildren()) {
			task.accept((WallEditPart) child);
		}
	}

	@Override
	protected List<Wall> getModelChildren() {
		return table.walls();
	}

	@Override
	protected IFigure createFigure() {
		return new StripLayer(table::area);
	}

	/** The room can't be removed from its own drawing. */
	@Override
	protected void createEditPolicies() {
		installEditPolicy(EditPolicy.COMPONENT_ROLE, new RootComponentEditPolicy());
	}

	/** A click beside the walls selects the room. */
	@Override
	public DragTracker getDragTracker(Request request) {
		return new DeselectAllTracker(this);
	}

	@Override
	public Object getAdapter(@SuppressWarnings("rawtypes") Class key) {
		return key.isInstance(getModel()) ? getModel() : super.getAdapter(key);
	}
}
