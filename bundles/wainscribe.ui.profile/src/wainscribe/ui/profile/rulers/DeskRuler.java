// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.profile.rulers;

import java.util.Objects;

import org.eclipse.draw2d.FigureCanvas;
import org.eclipse.draw2d.Viewport;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Transform;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Event;

import wainscribe.model.length.Length;
import wainscribe.ui.drafting.appearance.Appearance;
import wainscribe.ui.drafting.rulers.RulerMarks;
import wainscribe.ui.profile.desk.DeskListener;
import wainscribe.ui.profile.desk.ProfileDesk;

/**
 * A ruler along one edge of the desk, in the home's unit: the one at the top begins at the wall line, the one at the side at
 * the lower edge. Painted directly at any scale, numbers at the side set turned.
 */
public final class DeskRuler extends Canvas implements DeskListener {

	/** Width of a ruler in pixels. */
	public static final int BREADTH = 24;

	private static final double NUMBER_SIZE = 10.5;
	private static final int LONG = 10;
	private static final int SHORT = 5;
	private static final int AWAY = 3;
	private static final int QUARTER_TURN = -90;
	private static final int NUMBER_ROOM = 72;

	private final ProfileDesk desk;
	private final FigureCanvas canvas;
	private final boolean level;
	private int pointer = -1;

	/**
	 * Creates a ruler.
	 *
	 * @param parent where it lies
	 * @param desk   the desk
	 * @param canvas the canvas it measures; it follows its scrolling
	 * @param level  true for the ruler at the top, false for the one at the side
	 */
	public DeskRuler(Composite parent, ProfileDesk desk, FigureCanvas canvas, boolean level) {
		super(parent, SWT.DOUBLE_BUFFERED | SWT.NO_FOCUS);
		this.desk = Objects.requireNonNull(desk);
		this.canvas = Objects.requireNonNull(canvas);
		this.level = level;
		addListener(SWT.Paint, this::paint);
		canvas.getViewport().addPropertyChangeListener(Viewport.PROPERTY_VIEW_LOCATION, event -> deskChanged());
		canvas.addListener(SWT.MouseMove, event -> point(level ? event.x : event.y));
		canvas.addListener(SWT.MouseExit, event -> point(-1));
		desk.addListener(this);
		addListener(SWT.Dispose, event -> desk.removeListener(this));
	}

	@Override
	public void deskChanged() {
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
		gc.setBackground(Appearance.colour(desk.colours().ruler()));
		gc.fillRectangle(0, 0, size.x, size.y);
		gc.setForeground(Appearance.colour(desk.colours().rulerInk()));
		gc.setFont(desk.letters().ofSize(NUMBER_SIZE));
		gc.drawLine(level ? 0 : BREADTH - 1, level ? BREADTH - 1 : 0, level ? size.x : BREADTH - 1, level ? BREADTH - 1 : size.y);
		paintMarks(gc, level ? event.x : event.y, level ? event.x + event.width : event.y + event.height);
		if (pointer >= 0) {
			gc.setForeground(Appearance.colour(desk.colours().select()));
			gc.drawLine(level ? pointer : 0, level ? 0 : pointer, level ? pointer : BREADTH, level ? BREADTH : pointer);
		}
	}

	private void paintMarks(GC gc, int from, int to) {
		RulerMarks marks = desk.marks();
		int scroll = level ? canvas.getViewport().getViewLocation().x : canvas.getViewport().getViewLocation().y;
		Length one = desk.plane().length(level ? from + scroll - NUMBER_ROOM : -(to + scroll) - NUMBER_ROOM);
		Length other = desk.plane().length(level ? to + scroll : -(from + scroll) + NUMBER_ROOM);
		Length last = other.max(one);
		for (Length at = one.roundedTo(marks.numbered()).minus(marks.numbered()); !at.isMoreThan(last); at = at.plus(marks.fine())) {
			double pixel = at.approximateMillimetres() * desk.plane().scale();
			int place = (int) Math.round(level ? pixel : -pixel) - scroll;
			boolean numbered = at.isMultipleOf(marks.numbered());
			int length = numbered ? LONG : SHORT;
			if (level) {
				gc.drawLine(place, BREADTH - length, place, BREADTH);
			} else {
				gc.drawLine(BREADTH - length, place, BREADTH, place);
			}
			if (numbered) {
				number(gc, marks.text(at), place);
			}
		}
	}

	private void number(GC gc, String text, int place) {
		if (level) {
			gc.drawString(text, place + AWAY, 1, true);
			return;
		}
		Transform turn = new Transform(getDisplay());
		try {
			turn.translate(1, place - AWAY);
			turn.rotate(QUARTER_TURN);
			gc.setTransform(turn);
			gc.drawString(text, 0, 0, true);
		} finally {
			gc.setTransform(null);
			turn.dispose();
		}
	}
}
