// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.elevation.ghost;

import java.util.List;
import java.util.Objects;

import org.eclipse.draw2d.IFigure;
import org.eclipse.draw2d.geometry.PointList;
import org.eclipse.draw2d.geometry.Rectangle;
import org.eclipse.gef.GraphicalViewer;
import org.eclipse.gef.LayerConstants;
import org.eclipse.gef.editparts.LayerManager;
import org.eclipse.osgi.util.NLS;

import wainscribe.model.Wall;
import wainscribe.ui.drafting.appearance.Appearance;
import wainscribe.ui.elevation.Messages;
import wainscribe.ui.elevation.table.DrawingTable;
import wainscribe.ui.elevation.table.TableListener;
import wainscribe.ui.elevation.tools.WallWalk;
import wainscribe.ui.elevation.words.ElementText;

/** Shows the wall that was chosen as a ghost on the wall that is worked on, and follows from wall to wall. */
public final class GhostView implements TableListener {

	private static final double NAME = 10.5;

	private final GraphicalViewer viewer;
	private final DrawingTable table;
	private final WallWalk walk;
	private GhostFigure figure;

	private GhostView(GraphicalViewer viewer, DrawingTable table, WallWalk walk) {
		this.viewer = Objects.requireNonNull(viewer);
		this.table = Objects.requireNonNull(table);
		this.walk = Objects.requireNonNull(walk);
	}

	/** Lets a viewer, which has a root and a control, show ghosts. */
	public static void attach(GraphicalViewer viewer, DrawingTable table, WallWalk walk) {
		GhostView ghost = new GhostView(viewer, table, walk);
		table.addListener(ghost);
		viewer.addSelectionChangedListener(event -> ghost.drawingsChanged());
	}

	@Override
	public void roomReplaced() {
		drawingsChanged();
	}

	@Override
	public void drawingsChanged() {
		GhostFigure before = figure;
		figure = walk.wall().map(this::of).orElse(null);
		if (before != null) {
			before.getParent().remove(before);
		}
		if (figure != null) {
			layer().add(figure);
		}
	}

	private GhostFigure of(Wall wall) {
		return GhostPlan.of(table.walls(), wall, table.overlays().ghost()).map(plan -> {
			List<PointList> outlines = GhostOutlines.of(table.design(), plan, table.placeOf(wall));
			Rectangle pixels = table.placeOf(wall).pixels(table.drawingOf(wall).wall());
			return new GhostFigure(outlines, NLS.bind(Messages.GhostFigure_Of, ElementText.name(plan.wall())),
					table.letters().ofSize(NAME), pixels, Appearance.colour(table.colours().guide()),
					Appearance.colour(table.colours().ruler()));
		}).orElse(null);
	}

	/** Over the walls, under handles and feedback. */
	private IFigure layer() {
		return ((LayerManager) viewer.getEditPartRegistry().get(LayerManager.ID)).getLayer(LayerConstants.CONNECTION_LAYER);
	}
}
