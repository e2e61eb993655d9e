// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.elevation.rulers;

import java.util.Objects;

import org.eclipse.draw2d.FigureCanvas;
import org.eclipse.draw2d.Viewport;
import org.eclipse.draw2d.geometry.Rectangle;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Transform;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Event;

import wainscribe.model.Wall;
import wainscribe.model.length.Length;
import wainscribe.ui.drafting.appearance.Appearance;
import wainscribe.ui.drafting.rulers.RulerMarks;
import wainscribe.ui.elevation.table.DrawingTable;
import wainscribe.ui.elevation.table.Projection;

/**
 * A ruler along one edge of the drawing table, in the home's unit. The one at the top begins anew at the left end of each
 * wall, the one at the side at the finished floor: where a tape would be put. Painted directly at any scale; the numbers at
 * the side are set turned, not turned as pictures.
 */
public final class Ruler extends Canvas {

	/** Width of a ruler in pixels. */
	public static final int BREADTH = 24;

	private static final double NUMBER_SIZE = 10.5;
	private static final int LONG = 10;
	private static final int SHORT = 5;
	private static final int AWAY = 3;
	private static final int QUARTER_TURN = -90;
	private static final int BAND_ALPHA = 70;
	/** A number reaches so far from its mark. */
	private static final int NUMBER_ROOM = 72;

	private final DrawingTable table;
	private final FigureCanvas canvas;
	private final boolean level;
	private Rectangle band;
	private int pointer = -1;

	/**
	 * Creates a ruler.
	 *
	 * @param parent where it lies
	 * @param table  the drawing table
	 * @param canvas the canvas it measures; it follows its scrolling
	 * @param level  true for the ruler at the top, false for the one at the side
	 */
	public Ruler(Composite parent, DrawingTable table, FigureCanvas canvas, boolean level) {
		super(parent, SWT.DOUBLE_BUFFERED | SWT.NO_FOCUS);
		this.table = Objects.requireNonNull(table);
		this.canvas = Objects.requireNonNull(canvas);
		this.level = level;
		addListener(SWT.Paint, this::paint);
		canvas.getViewport().addPropertyChangeListener(Viewport.PROPERTY_VIEW_LOCATION, event -> redrawIfAlive());
		canvas.addListener(SWT.MouseMove, event -> point(level ? event.x : event.y));
		canvas.addListener(SWT.MouseExit, event -> point(-1));
	}

	/** Marks what is selected by a band; null for nothing. */
	public void setBand(Rectangle selected) {
		if (!isDisposed() && !Objects.equals(band, selected)) {
			redraw(band);
			band = selected;
			redraw(band);
		}
	}

	private void redraw(Rectangle pixels) {
		if (pixels != null) {
			redraw(level ? pixels.x - scroll() : 0, level ? 0 : pixels.y - scroll(), level ? pixels.width : BREADTH,
					level ? BREADTH : pixels.height, false);
		}
	}

	private void redrawIfAlive() {
		if (!isDisposed()) {
			redraw();
		}
	}

	private void point(int at) {
		if (at != pointer && !isDisposed()) {
			strip(pointer);
			pointer = at;
			strip(pointer);
		}
	}

	private void strip(int at) {
		if (at >= 0) {
			redraw(level ? at - 1 : 0, level ? 0 : at - 1, level ? 3 : BREADTH, level ? BREADTH : 3, false);
		}
	}

	private void paint(Event event) {
		GC gc = event.gc;
		Point size = getSize();
		Color ground = Appearance.colour(table.colours().ruler());
		Color ink = Appearance.colour(table.colours().rulerInk());
		gc.setBackground(ground);
		gc.fillRectangle(0, 0, size.x, size.y);
		paintBand(gc);
		gc.setForeground(ink);
		gc.setBackground(ground);
		gc.setFont(table.letters().ofSize(NUMBER_SIZE));
		gc.drawLine(level ? 0 : BREADTH - 1, level ? BREADTH - 1 : 0, level ? size.x : BREADTH - 1, level ? BREADTH - 1 : size.y);
		if (level) {
			table.walls().forEach(wall -> paintLevel(gc, wall, event.x, event.x + event.width));
		} else if (!table.walls().isEmpty()) {
			paintPlumb(gc, event.y, event.y + event.height);
		}
		if (pointer >= 0) {
			gc.setForeground(Appearance.colour(table.colours().select()));
			gc.drawLine(level ? pointer : 0, level ? 0 : pointer, level ? pointer : BREADTH, level ? BREADTH : pointer);
		}
	}

	private void paintBand(GC gc) {
		if (band != null) {
			gc.setBackground(Appearance.colour(table.colours().select()));
			gc.setAlpha(BAND_ALPHA);
			if (level) {
				gc.fillRectangle(band.x - scroll(), 0, band.width, BREADTH);
			} else {
				gc.fillRectangle(0, band.y - scroll(), BREADTH, band.height);
			}
			gc.setAlpha(255);
		}
	}

	private void paintLevel(GC gc, Wall wall, int from, int to) {
		Projection place = table.placeOf(wall);
		double origin = place.left() - scroll();
		double end = table.drawingOf(wall).wall().x1();
		RulerMarks marks = RulerMarks.of(table.units(), place.scale());
		// begins where something is seen: a long wall drawn large has many marks
		Length seen = place.length((int) Math.floor(from - origin) - NUMBER_ROOM).roundedTo(marks.numbered()).minus(marks.numbered());
		for (Length at = seen.max(Length.ZERO); at.approximateMillimetres() <= end; at = at.plus(marks.fine())) {
			int x = (int) Math.round(origin + at.approximateMillimetres() * place.scale());
			if (x > to) {
				return;
			}
			if (x >= from - NUMBER_ROOM) {
				boolean numbered = at.isMultipleOf(marks.numbered());
				gc.drawLine(x, BREADTH - (numbered ? LONG : SHORT), x, BREADTH);
				boolean fits = (end - at.approximateMillimetres()) * place.scale() > BREADTH;
				if (numbered && (fits || at.signum() == 0)) {
					gc.drawString(marks.text(at), x + AWAY, 1, true);
				}
			}
		}
	}

	private void paintPlumb(GC gc, int from, int to) {
		Projection place = table.placeOf(table.walls().getFirst());
		double floor = place.floor() - scroll();
		RulerMarks marks = RulerMarks.of(table.units(), place.scale());
		Length first = place.length((int) Math.floor(floor - to) - NUMBER_ROOM).roundedTo(marks.numbered()).minus(marks.numbered());
		Length last = place.length((int) Math.ceil(floor - from) + 1);
		for (Length at = first; !at.isMoreThan(last); at = at.plus(marks.fine())) {
			int y = (int) Math.round(floor - at.approximateMillimetres() * place.scale());
			boolean numbered = at.isMultipleOf(marks.numbered());
			gc.drawLine(BREADTH - (numbered ? LONG : SHORT), y, BREADTH, y);
			if (numbered) {
				turned(gc, marks.text(at), y);
			}
		}
	}

	private void turned(GC gc, String text, int y) {
		Transform turn = new Transform(getDisplay());
		try {
			turn.translate(1, y - AWAY);
			turn.rotate(QUARTER_TURN);
			gc.setTransform(turn);
			gc.drawString(text, 0, 0, true);
		} finally {
			gc.setTransform(null);
			turn.dispose();
		}
	}

	private int scroll() {
		org.eclipse.draw2d.geometry.Point location = canvas.getViewport().getViewLocation();
		return level ? location.x : location.y;
	}
}
