// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.elevation;

import java.util.Objects;
import java.util.Optional;

import org.eclipse.gef.EditPart;
import org.eclipse.gef.GraphicalViewer;

import wainscribe.model.Wall;
import wainscribe.ui.ElementSelector;
import wainscribe.ui.elevation.editparts.ThingEditPart;
import wainscribe.ui.elevation.editparts.WallEditPart;
import wainscribe.ui.elevation.table.DrawingTable;
import wainscribe.ui.elevation.table.TableZoom;

/** Selects on the drawing table what a finding speaks of. */
final class ElementFinder implements ElementSelector {

	private final GraphicalViewer viewer;
	private final DrawingTable table;
	private final TableZoom zoom;

	ElementFinder(GraphicalViewer viewer, DrawingTable table, TableZoom zoom) {
		this.viewer = Objects.requireNonNull(viewer);
		this.table = Objects.requireNonNull(table);
		this.zoom = Objects.requireNonNull(zoom);
	}

	@Override
	public void select(String wall, String elementIdOrFrameId) {
		Optional<Wall> named = table.walls().stream().filter(candidate -> wall.equals(candidate.getName())).findFirst();
		Optional<EditPart> found = named.isPresent() ? on(named.get(), elementIdOrFrameId)
				: table.walls().stream().flatMap(candidate -> thing(candidate, elementIdOrFrameId).stream()).findFirst();
		if (found.isEmpty()) {
			viewer.deselectAll();
			return;
		}
		named.ifPresent(zoom::reveal);
		viewer.select(found.get());
		viewer.reveal(found.get());
	}

	@Override
	public void light(String wall, String elementIdOrFrameId) {
		for (Wall each : table.walls()) {
			boolean here = wall.equals(each.getName());
			part(each).ifPresent(part -> part.things().forEach(
					thing -> thing.getFigure().setPointedAt(here && !elementIdOrFrameId.isEmpty() && thing.isCalled(elementIdOrFrameId))));
		}
	}

	/** What is not found on the wall stands for the wall. */
	private Optional<EditPart> on(Wall wall, String word) {
		return thing(wall, word).or(() -> part(wall).map(EditPart.class::cast));
	}

	private Optional<EditPart> thing(Wall wall, String word) {
		return word.isEmpty() ? Optional.empty()
				: part(wall).flatMap(part -> part.things().stream().filter(thing -> thing.isCalled(word)).findFirst())
						.map((ThingEditPart thing) -> thing);
	}

	private Optional<WallEditPart> part(Wall wall) {
		return Optional.ofNullable((WallEditPart) viewer.getEditPartRegistry().get(wall));
	}
}
