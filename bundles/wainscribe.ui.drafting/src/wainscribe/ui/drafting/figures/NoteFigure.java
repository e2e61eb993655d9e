// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.drafting.figures;

import java.util.List;

import org.eclipse.draw2d.Figure;
import org.eclipse.draw2d.FigureUtilities;
import org.eclipse.draw2d.Graphics;
import org.eclipse.draw2d.geometry.Dimension;
import org.eclipse.draw2d.geometry.Point;
import org.eclipse.draw2d.geometry.Rectangle;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.graphics.Font;

import wainscribe.ui.drafting.painting.Letters;

/** A few lines of text beside the pointer. */
public final class NoteFigure extends Figure {

	private static final double SIZE = 13;
	private static final int PAD_X = 9;
	private static final int PAD_Y = 6;
	private static final int LINE_GAP = 2;
	private static final int ROUND = 8;
	private static final int AWAY = 18;

	private final Font font;
	private List<String> lines = List.of();
	private Point beside = new Point();

	/**
	 * Creates an empty note.
	 *
	 * @param letters fonts
	 * @param ground  colour of the ground
	 * @param text    colour of the text
	 */
	public NoteFigure(Letters letters, Color ground, Color text) {
		font = letters.ofSize(SIZE);
		setBackgroundColor(ground);
		setForegroundColor(text);
	}

	/** Writes other lines; a note without lines is not seen. */
	public void setLines(List<String> others) {
		if (!lines.equals(others)) {
			lines = List.copyOf(others);
			setVisible(!lines.isEmpty());
			repaint();
		}
	}

	/** Returns what it says. */
	public List<String> lines() {
		return lines;
	}

	/**
	 * Places the note beside a point, within an area.
	 *
	 * @param point what it stands beside
	 * @param area  what is seen
	 */
	public void placeBeside(Point point, Rectangle area) {
		beside = point;
		stay(area);
	}

	/** Keeps the note where it was placed, in its size for what it says, within an area. */
	public void stay(Rectangle area) {
		Dimension size = size();
		int x = beside.x + AWAY;
		int y = beside.y + AWAY;
		if (x + size.width > area.right()) {
			x = beside.x - AWAY - size.width;
		}
		if (y + size.height > area.bottom()) {
			y = beside.y - AWAY - size.height;
		}
		setBounds(new Rectangle(Math.max(area.x, x), Math.max(area.y, y), size.width, size.height));
	}

	private Dimension size() {
		int width = 0;
		for (String line : lines) {
			width = Math.max(width, FigureUtilities.getTextWidth(line, font));
		}
		return lines.isEmpty() ? new Dimension()
				: new Dimension(width + 2 * PAD_X, lines.size() * lineHeight() - LINE_GAP + 2 * PAD_Y);
	}

	private int lineHeight() {
		return FigureUtilities.getFontMetrics(font).getHeight() + LINE_GAP;
	}

	@Override
	protected void paintFigure(Graphics graphics) {
		graphics.setAntialias(SWT.ON);
		graphics.fillRoundRectangle(getBounds(), ROUND, ROUND);
		graphics.setFont(font);
		int y = getBounds().y + PAD_Y;
		for (String line : lines) {
			graphics.drawString(line, getBounds().x + PAD_X, y);
			y += lineHeight();
		}
	}

	/** Never in the way of the pointer. */
	@Override
	public boolean containsPoint(int x, int y) {
		return false;
	}
}
