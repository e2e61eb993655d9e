// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.elevation.rulers;

import java.util.List;
import java.util.Objects;
import java.util.Optional;

import org.eclipse.draw2d.FigureCanvas;
import org.eclipse.draw2d.IFigure;
import org.eclipse.draw2d.geometry.Point;
import org.eclipse.draw2d.geometry.Rectangle;
import org.eclipse.gef.EditPart;
import org.eclipse.gef.GraphicalViewer;
import org.eclipse.gef.LayerConstants;
import org.eclipse.gef.editparts.LayerManager;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Event;

import wainscribe.commands.AddLineCommand;
import wainscribe.model.Guide;
import wainscribe.model.WainscribeFactory;
import wainscribe.model.Wall;
import wainscribe.model.length.Length;
import wainscribe.model.length.LengthFormat;
import wainscribe.model.outline.WallShape;
import wainscribe.ui.drafting.appearance.Appearance;
import wainscribe.ui.drafting.figures.NoteFigure;
import wainscribe.ui.drafting.history.ModelCommand;
import wainscribe.ui.elevation.Messages;
import wainscribe.ui.elevation.figures.GuideFigure;
import wainscribe.ui.elevation.snapping.Snap;
import wainscribe.ui.elevation.snapping.SnapLines;
import wainscribe.ui.elevation.snapping.TableLines;
import wainscribe.ui.elevation.table.DrawingTable;
import wainscribe.ui.elevation.table.LineKey;
import wainscribe.ui.elevation.table.Overlay;
import wainscribe.ui.elevation.table.Projection;

/**
 * Pulls guides out of a ruler: level ones out of the one at the top, plumb ones out of the one at the side. Let go over the
 * ruler, nothing happens.
 */
public final class GuidePull {

	private static final int REACH = 7;

	private final Ruler ruler;
	private final boolean level;
	private final DrawingTable table;
	private final GraphicalViewer viewer;
	private GuideFigure line;
	private NoteFigure note;

	private GuidePull(Ruler ruler, boolean level, DrawingTable table, GraphicalViewer viewer) {
		this.ruler = Objects.requireNonNull(ruler);
		this.level = level;
		this.table = Objects.requireNonNull(table);
		this.viewer = Objects.requireNonNull(viewer);
	}

	/**
	 * Lets guides be pulled out of a ruler.
	 *
	 * @param ruler  the ruler
	 * @param level  whether it is the one at the top
	 * @param table  the drawing table
	 * @param viewer shows the table
	 */
	public static void outOf(Ruler ruler, boolean level, DrawingTable table, GraphicalViewer viewer) {
		GuidePull pull = new GuidePull(ruler, level, table, viewer);
		ruler.setToolTipText(level ? Messages.GuidePull_Level : Messages.GuidePull_Plumb);
		ruler.setCursor(ruler.getDisplay().getSystemCursor(level ? SWT.CURSOR_SIZENS : SWT.CURSOR_SIZEWE));
		ruler.addListener(SWT.MouseDown, pull::begin);
		ruler.addListener(SWT.MouseMove, pull::pull);
		ruler.addListener(SWT.MouseUp, pull::drop);
	}

	private void begin(Event event) {
		if (event.button == 1 && !table.walls().isEmpty()) {
			line = new GuideFigure(Appearance.colour(table.colours().guide()));
			note = new NoteFigure(table.letters(), Appearance.colour(table.colours().note()),
					Appearance.colour(table.colours().noteText()));
			layer().add(line);
			layer().add(note);
			pull(event);
		}
	}

	private void pull(Event event) {
		if (line == null) {
			return;
		}
		Point pointer = onLayer(event);
		Optional<Place> place = place(event, pointer);
		line.setVisible(place.isPresent());
		note.setVisible(place.isPresent());
		Rectangle seen = seen();
		place.ifPresent(found -> {
			Projection wall = table.placeOf(found.wall());
			line.setBounds(level ? new Rectangle(seen.x, wall.y(found.at()), seen.width, 1)
					: new Rectangle(wall.x(found.at()), seen.y, 1, seen.height));
			note.setLines(List.of(NLS.bind(level ? Messages.LineEditPart_AboveFloor : Messages.LineEditPart_FromLeft,
					LengthFormat.asShown(found.at(), table.units()))));
			note.placeBeside(pointer, seen);
		});
	}

	private void drop(Event event) {
		if (line == null) {
			return;
		}
		layer().remove(line);
		layer().remove(note);
		line = null;
		note = null;
		place(event, onLayer(event)).ifPresent(this::lay);
	}

	private void lay(Place place) {
		Guide guide = WainscribeFactory.eINSTANCE.createGuide();
		guide.setAt(place.at());
		table.overlays().show(Overlay.GUIDES, true);
		viewer.getEditDomain().getCommandStack().execute(new ModelCommand(level
				? AddLineCommand.level(table.session().room(), guide) : AddLineCommand.plumb(place.wall(), guide)));
		if (viewer.getEditPartRegistry().get(new LineKey(place.wall(), guide)) instanceof EditPart part) {
			viewer.flush();
			viewer.select(part);
			viewer.getControl().setFocus();
		}
	}

	/** Returns where the guide would lie; nowhere while the pointer is not over the drawing. */
	private Optional<Place> place(Event event, Point pointer) {
		org.eclipse.swt.graphics.Point onCanvas = onCanvas(event);
		if (!viewer.getControl().getBounds().contains(onCanvas.x + viewer.getControl().getBounds().x,
				onCanvas.y + viewer.getControl().getBounds().y)) {
			return Optional.empty();
		}
		Wall wall = wallAt(pointer.x);
		Projection projection = table.placeOf(wall);
		SnapLines lines = TableLines.of(table, wall, null);
		Length wished = level ? projection.yAt(pointer.y) : projection.xAt(pointer.x);
		Length at = Snap.nearest(List.of(wished), level ? lines.level() : lines.plumb(), projection.length(REACH))
				.map(snap -> wished.plus(snap.correction())).orElseGet(() -> wished.roundedTo(table.units().tapeMark()))
				.max(Length.ZERO);
		return Optional.of(new Place(wall, level ? at : at.min(WallShape.of(wall).length())));
	}

	private Wall wallAt(int column) {
		Wall found = table.walls().getFirst();
		for (Wall wall : table.walls()) {
			if (table.placeOf(wall).left() <= column) {
				found = wall;
			}
		}
		return found;
	}

	private org.eclipse.swt.graphics.Point onCanvas(Event event) {
		return ruler.getDisplay().map(ruler, viewer.getControl(), event.x, event.y);
	}

	private Point onLayer(Event event) {
		org.eclipse.swt.graphics.Point point = onCanvas(event);
		Point pointer = new Point(point.x, point.y);
		layer().translateToRelative(pointer);
		return pointer;
	}

	private Rectangle seen() {
		Rectangle area = ((FigureCanvas) viewer.getControl()).getViewport().getClientArea().getCopy();
		((FigureCanvas) viewer.getControl()).getViewport().translateToParent(area);
		layer().translateToRelative(area);
		return area;
	}

	private IFigure layer() {
		return ((LayerManager) viewer.getEditPartRegistry().get(LayerManager.ID)).getLayer(LayerConstants.FEEDBACK_LAYER);
	}

	/** Where a guide would lie. */
	private record Place(Wall wall, Length at) {
	}
}
