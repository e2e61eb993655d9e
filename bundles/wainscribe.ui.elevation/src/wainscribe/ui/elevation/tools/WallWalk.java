// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.elevation.tools;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

import org.eclipse.gef.EditPart;
import org.eclipse.gef.GraphicalViewer;

import wainscribe.model.Wall;
import wainscribe.ui.elevation.editparts.ThingEditPart;
import wainscribe.ui.elevation.editparts.WallEditPart;
import wainscribe.ui.elevation.table.DrawingTable;
import wainscribe.ui.elevation.table.TableZoom;

/** Goes from wall to wall in walking order, and from thing to thing along a wall. */
public final class WallWalk {

	private static final Comparator<ThingEditPart> LEFT_TO_RIGHT = Comparator
			.comparingInt((ThingEditPart part) -> part.getFigure().getBounds().x)
			.thenComparingInt(part -> -part.getFigure().getBounds().y);

	private final GraphicalViewer viewer;
	private final DrawingTable table;
	private final TableZoom zoom;

	/** Creates the walk of a viewer. */
	public WallWalk(GraphicalViewer viewer, DrawingTable table, TableZoom zoom) {
		this.viewer = viewer;
		this.table = table;
		this.zoom = zoom;
	}

	/** Returns the wall that is selected, or that holds what is selected first; else the first wall. */
	public Optional<Wall> wall() {
		List<Wall> walls = table.walls();
		Optional<Wall> selected = switch (viewer.getFocusEditPart()) {
			case WallEditPart wall -> Optional.of(wall.getModel());
			case ThingEditPart thing -> Optional.of(thing.wall());
			case null, default -> Optional.empty();
		};
		return selected.or(() -> walls.isEmpty() ? Optional.empty() : Optional.of(walls.getFirst()));
	}

	/** Goes on by some walls; behind the last comes the first. */
	public void goBy(int steps) {
		boolean any = viewer.getFocusEditPart() instanceof WallEditPart || viewer.getFocusEditPart() instanceof ThingEditPart;
		int size = table.walls().size();
		if (size > 0) {
			int from = wall().map(table.walls()::indexOf).orElse(0);
			goTo(any ? Math.floorMod(from + steps, size) : steps > 0 ? 0 : size - 1);
		}
	}

	/** Goes to a wall by its place in walking order, from 0. */
	public void goTo(int index) {
		if (index >= 0 && index < table.walls().size()) {
			select(table.walls().get(index));
			zoom.reveal(table.walls().get(index));
		}
	}

	/** Goes on by some things along the wall, left to right and then from below; comes round at the ends. */
	public void goAlong(int steps) {
		List<EditPart> things = things();
		if (!things.isEmpty()) {
			int from = things.indexOf(viewer.getFocusEditPart());
			EditPart next = things.get(Math.floorMod(from < 0 && steps < 0 ? -1 : from + steps, things.size()));
			viewer.select(next);
			viewer.reveal(next);
		}
	}

	private List<EditPart> things() {
		List<EditPart> things = new ArrayList<>();
		wall().map(wall -> (WallEditPart) viewer.getEditPartRegistry().get(wall)).ifPresent(part -> {
			things.add(part);
			part.things().stream().sorted(LEFT_TO_RIGHT).forEach(things::add);
		});
		return things;
	}

	private void select(Wall wall) {
		if (viewer.getEditPartRegistry().get(wall) instanceof EditPart part) {
			viewer.select(part);
		}
	}
}
