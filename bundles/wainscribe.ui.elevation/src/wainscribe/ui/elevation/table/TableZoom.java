// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.elevation.table;

import java.util.Comparator;
import java.util.List;
import java.util.Objects;

import org.eclipse.core.runtime.ListenerList;
import org.eclipse.draw2d.FigureCanvas;
import org.eclipse.draw2d.Viewport;
import org.eclipse.draw2d.geometry.Dimension;
import org.eclipse.draw2d.geometry.Point;
import org.eclipse.draw2d.geometry.Rectangle;
import org.eclipse.gef.GraphicalViewer;
import org.eclipse.swt.SWT;

import wainscribe.model.Wall;
import wainscribe.model.length.Length;
import wainscribe.model.outline.WallShape;

/**
 * The scale of the drawing table, named as on paper: at 1:20 a millimetre of the screen stands for 20 on the wall. Zooming
 * keeps what is looked at where it is.
 */
public final class TableZoom {

	/** Scales to choose from, the first number of 1:n. Usual on drawings in metric and in inch measure (1/2 in to the foot is 1:24). */
	public static final List<Integer> SCALES = List.of(5, 10, 12, 16, 20, 24, 32, 48, 50, 100);

	private static final double PIXELS_PER_MILLIMETRE = 96 / 25.4;
	private static final double STEP = 1.25;
	private static final double LEAST = PIXELS_PER_MILLIMETRE / 400;
	private static final double MOST = PIXELS_PER_MILLIMETRE;
	private static final int PASSES = 6;
	/** Two scales as near as this look the same. */
	private static final double NEAR = 0.002;
	private static final int ROOM_TO_SPARE = 12;
	/** Nobody is shown less than this without asking: the numbers can be read. */
	private static final double READABLE = PIXELS_PER_MILLIMETRE / 60;

	private final GraphicalViewer viewer;
	private final DrawingTable table;
	private final ListenerList<Runnable> listeners = new ListenerList<>();
	private boolean following = true;
	/** The size that the scale was last chosen for; null before. */
	private Dimension followed;

	/**
	 * Creates the zoom of a viewer.
	 *
	 * @param viewer shows the table, has a figure canvas
	 * @param table  the table
	 */
	public TableZoom(GraphicalViewer viewer, DrawingTable table) {
		this.viewer = Objects.requireNonNull(viewer);
		this.table = Objects.requireNonNull(table);
	}

	/** Returns pixels for a millimetre at a scale of 1:n. */
	public static double pixelsAt(int n) {
		return PIXELS_PER_MILLIMETRE / n;
	}

	/** Returns the scale as on paper, such as {@code 1:20}. */
	public String text() {
		return "1:" + Math.max(1, Math.round(PIXELS_PER_MILLIMETRE / table.scale())); //$NON-NLS-1$
	}

	/** Starts to tell when the scale has changed. */
	public void addListener(Runnable listener) {
		listeners.add(listener);
	}

	/** Draws one step larger. */
	public void zoomIn() {
		zoomTo(table.scale() * STEP, centre());
	}

	/** Draws one step smaller. */
	public void zoomOut() {
		zoomTo(table.scale() / STEP, centre());
	}

	/** Draws to a scale of 1:n. */
	public void zoomTo(int n) {
		zoomTo(pixelsAt(n), centre());
	}

	/** Draws steps larger or smaller, round the pointer. */
	public void zoomAt(Point pointer, int steps) {
		zoomTo(table.scale() * Math.pow(STEP, steps), pointer);
	}

	/**
	 * Chooses the scale for a table that nothing was drawn on yet, so that nothing has to be drawn twice.
	 *
	 * @param canvas the size that the canvas will have; nothing is chosen for an empty one
	 */
	public void begin(Dimension canvas) {
		Dimension size = seen(canvas.width, canvas.height);
		if (!table.walls().isEmpty() && !size.isEmpty()) {
			table.setScale(scaleFor(List.of(longest()), READABLE, size));
			followed = size;
			listeners.forEach(Runnable::run);
		}
	}

	/** Follows the size of the table as long as nobody has chosen a scale: every wall can be seen whole, and the first one is. */
	public void follow() {
		List<Wall> walls = table.walls();
		if (following && !walls.isEmpty()) {
			Dimension size = seen();
			if (!size.equals(followed)) {
				followed = size;
				fit(List.of(longest()), READABLE, size);
			}
			viewer.flush();
			reveal(walls.getFirst());
			following = true;
		}
	}

	private Wall longest() {
		return table.walls().stream().max(Comparator.comparing(wall -> WallShape.of(wall).length())).orElseThrow();
	}

	/** Shows the whole room. */
	public void fitRoom() {
		fit(table.walls(), LEAST, viewport().getClientArea().getSize());
		scrollTo(new Point(0, 0));
	}

	/** Shows one wall as large as it goes. */
	public void fitWall(Wall wall) {
		fit(List.of(wall), LEAST, viewport().getClientArea().getSize());
		reveal(wall);
	}

	/** Moves a wall into view without changing the scale. */
	public void reveal(Wall wall) {
		Rectangle extent = table.placeOf(wall).pixels(table.drawingOf(wall).extent());
		Rectangle view = viewport().getClientArea();
		int x = extent.width <= view.width ? extent.getCenter().x - view.width / 2 : extent.x - ROOM_TO_SPARE;
		int y = extent.height <= view.height ? extent.getCenter().y - view.height / 2 : extent.bottom() - view.height;
		scrollTo(new Point(x, y));
	}

	private Dimension seen() {
		org.eclipse.swt.graphics.Point size = viewer.getControl().getSize();
		return seen(size.x, size.y);
	}

	/**
	 * Returns how much of the table can be seen when all walls are on it; several walls side by side are scrolled. The same
	 * before and after the scroll bar has come.
	 */
	private Dimension seen(int width, int height) {
		FigureCanvas canvas = (FigureCanvas) viewer.getControl();
		boolean bar = table.walls().size() > 1 && canvas.getScrollbarsMode() != SWT.SCROLLBAR_OVERLAY;
		return new Dimension(width, Math.max(0, height - (bar ? canvas.getHorizontalBar().getSize().y : 0)));
	}

	private void fit(List<Wall> walls, double least, Dimension view) {
		if (walls.isEmpty() || view.isEmpty()) {
			return;
		}
		table.setScale(scaleFor(walls, least, view));
		viewer.flush();
		tell();
	}

	/** What the writing takes hardly changes with the scale, so a few looks at it find the scale at which both fit. */
	private double scaleFor(List<Wall> walls, double least, Dimension view) {
		double scale = table.scale();
		for (int pass = 0; pass < PASSES; pass++) {
			double next = Math.max(least, Math.min(MOST, fitting(walls, scale, view)));
			boolean near = Math.abs(next / scale - 1) < NEAR;
			scale = next;
			if (near) {
				break;
			}
		}
		return scale;
	}

	/** Returns the scale at which walls fit if their writing takes as much as at another scale. */
	private double fitting(List<Wall> walls, double scale, Dimension view) {
		Dimension size = table.sizeAt(walls, scale);
		double width = walls.stream().mapToDouble(wall -> WallShape.of(wall).length().approximateMillimetres()).sum();
		double height = walls.stream().mapToDouble(TableZoom::height).max().orElse(0);
		double along = (view.width - (size.width - width * scale)) / Math.max(1, width);
		double up = (view.height - (size.height - height * scale)) / Math.max(1, height);
		return Math.min(along, up);
	}

	private static double height(Wall wall) {
		WallShape shape = WallShape.of(wall);
		Length floor = shape.floorRight();
		return shape.ceilingLeft().max(shape.ceilingRight()).max(floor.max(Length.ZERO)).minus(floor.min(Length.ZERO))
				.approximateMillimetres();
	}

	private void zoomTo(double scale, Point anchor) {
		Point before = anchor.getCopy().translate(viewport().getViewLocation());
		Wall wall = wallNear(before.x);
		if (wall == null) {
			return;
		}
		double x = (before.x - table.placeOf(wall).left()) / table.scale();
		double y = (table.placeOf(wall).floor() - before.y) / table.scale();
		table.setScale(Math.max(LEAST, Math.min(MOST, scale)));
		viewer.flush();
		Projection place = table.placeOf(wall);
		scrollTo(new Point((int) Math.round(place.x(x)) - anchor.x, (int) Math.round(place.y(y)) - anchor.y));
		tell();
	}

	private Wall wallNear(int column) {
		Wall nearest = null;
		for (Wall wall : table.walls()) {
			if (nearest == null || table.placeOf(wall).left() <= column) {
				nearest = wall;
			}
		}
		return nearest;
	}

	private void scrollTo(Point location) {
		((FigureCanvas) viewer.getControl()).scrollTo(location.x, location.y);
	}

	private Point centre() {
		Rectangle view = viewport().getClientArea();
		return new Point(view.width / 2, view.height / 2);
	}

	private Viewport viewport() {
		return ((FigureCanvas) viewer.getControl()).getViewport();
	}

	private void tell() {
		following = false;
		listeners.forEach(Runnable::run);
	}
}
