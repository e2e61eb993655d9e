// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.elevation.figures;

import java.util.Objects;

import org.eclipse.draw2d.FigureUtilities;
import org.eclipse.draw2d.Graphics;
import org.eclipse.draw2d.geometry.Dimension;
import org.eclipse.draw2d.geometry.Rectangle;
import org.eclipse.gef.handles.HandleBounds;
import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.graphics.Font;

/** A thin line across a wall, plumb or level, with a word at its end. */
public final class LineFigure extends OutlineFigure implements HandleBounds {

	private static final int[] AXIS_DASHES = { 12, 4, 2, 4 };
	private static final int REACH = 3;
	private static final int PAD_X = 4;
	private static final int PAD_Y = 2;
	private static final int ROUND = 6;
	/** An axis is quieter than what it is compared with. */
	private static final int AXIS_ALPHA = 150;
	private static final int OPAQUE = 255;

	private final boolean plumb;
	private final boolean axis;
	private final Font font;
	private Color line;
	private Color ground;
	private String note = ""; //$NON-NLS-1$
	private int noteAt;
	private boolean onlyNote;

	/**
	 * Creates a line.
	 *
	 * @param plumb whether it is plumb; else level
	 * @param axis  whether it is drawn as an axis; else as a guide
	 * @param font  font of the word
	 */
	public LineFigure(boolean plumb, boolean axis, Font font) {
		this.plumb = plumb;
		this.axis = axis;
		this.font = Objects.requireNonNull(font);
	}

	/** Sets the colours of the line and of the ground under the word. */
	public void setColours(Color lines, Color under) {
		line = lines;
		ground = under;
		repaint();
	}

	/**
	 * Writes a word.
	 *
	 * @param text empty for none
	 * @param row  pixel row of its upper edge
	 */
	public void setNote(String text, int row) {
		if (!note.equals(text) || noteAt != row) {
			note = text;
			noteAt = row;
			repaint();
		}
	}

	/** Lets the line be pointed at by its word alone, so that what lies under it can be reached. */
	public void setOnlyNote(boolean only) {
		onlyNote = only;
	}

	/** Returns how far to either side of the line the figure reaches: far enough for its word. */
	public int reach() {
		return note.isEmpty() ? REACH + 1 : Math.max(REACH + 1, noteSize().width / 2 + PAD_X + 1);
	}

	@Override
	protected void paintFigure(Graphics graphics) {
		super.paintFigure(graphics);
		if (line == null) {
			return;
		}
		Rectangle bounds = getBounds();
		graphics.setForegroundColor(line);
		if (axis) {
			graphics.setLineDash(AXIS_DASHES);
			graphics.setAlpha(AXIS_ALPHA);
		}
		if (plumb) {
			graphics.drawLine(bounds.getCenter().x, bounds.y, bounds.getCenter().x, bounds.bottom());
		} else {
			graphics.drawLine(bounds.x, bounds.getCenter().y, bounds.right(), bounds.getCenter().y);
		}
		graphics.setLineStyle(Graphics.LINE_SOLID);
		graphics.setAlpha(OPAQUE);
		if (!note.isEmpty()) {
			paintNote(graphics);
		}
	}

	private void paintNote(Graphics graphics) {
		Rectangle place = notePlace();
		graphics.setBackgroundColor(ground);
		graphics.fillRoundRectangle(place, ROUND, ROUND);
		graphics.setFont(font);
		graphics.drawString(note, place.x + PAD_X, place.y + PAD_Y);
	}

	private Rectangle notePlace() {
		Dimension size = noteSize();
		return new Rectangle(getBounds().getCenter().x - size.width / 2 - PAD_X, noteAt, size.width + 2 * PAD_X,
				size.height + 2 * PAD_Y);
	}

	private Dimension noteSize() {
		return FigureUtilities.getTextExtents(note, font);
	}

	/** What is selected is the line, not the room round its word. */
	@Override
	public Rectangle getHandleBounds() {
		Rectangle bounds = getBounds();
		return plumb ? new Rectangle(bounds.getCenter().x - REACH - 1, bounds.y, 2 * REACH + 3, bounds.height)
				: new Rectangle(bounds.x, bounds.getCenter().y - REACH - 1, bounds.width, 2 * REACH + 3);
	}

	@Override
	public boolean containsPoint(int x, int y) {
		if (!super.containsPoint(x, y)) {
			return false;
		}
		if (!note.isEmpty() && notePlace().contains(x, y)) {
			return true;
		}
		int away = plumb ? Math.abs(x - getBounds().getCenter().x) : Math.abs(y - getBounds().getCenter().y);
		return !onlyNote && away <= REACH;
	}
}
