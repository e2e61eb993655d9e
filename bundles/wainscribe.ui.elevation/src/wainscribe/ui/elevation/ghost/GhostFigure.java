// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.elevation.ghost;

import java.util.List;

import org.eclipse.draw2d.Figure;
import org.eclipse.draw2d.FigureUtilities;
import org.eclipse.draw2d.Graphics;
import org.eclipse.draw2d.geometry.Dimension;
import org.eclipse.draw2d.geometry.PointList;
import org.eclipse.draw2d.geometry.Rectangle;
import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.graphics.Font;

/** Another wall, seen through the one that is worked on: thin outlines, never in the way of the pointer. */
final class GhostFigure extends Figure {

	private static final int ALPHA = 150;
	private static final int OPAQUE = 255;
	private static final int[] DASHES = { 5, 3 };
	private static final int PAD = 5;
	/** On a wall drawn so small the name would hide the rest. */
	private static final int SMALL = 120;
	private static final int INSET = 6;

	private final List<PointList> outlines;
	private final String name;
	private final Font font;
	private final Color ground;
	private final Rectangle wall;

	/**
	 * Creates a ghost.
	 *
	 * @param outlines closed outlines, at least the wall's own
	 * @param name     what it is, written in a corner
	 * @param font     font of the name
	 * @param wall     pixels of the wall it is seen through
	 * @param line     colour of the outlines
	 * @param ground   colour under the name
	 */
	GhostFigure(List<PointList> outlines, String name, Font font, Rectangle wall, Color line, Color ground) {
		this.outlines = List.copyOf(outlines);
		this.name = name;
		this.font = font;
		this.ground = ground;
		this.wall = wall;
		setForegroundColor(line);
		Rectangle bounds = wall.getCopy();
		outlines.forEach(outline -> bounds.union(outline.getBounds()));
		setBounds(bounds.expand(1, 1));
	}

	/** Returns what it shows. */
	List<PointList> outlines() {
		return outlines;
	}

	@Override
	protected void paintFigure(Graphics graphics) {
		graphics.setAlpha(ALPHA);
		graphics.setLineDash(DASHES);
		outlines.forEach(graphics::drawPolygon);
		graphics.setAlpha(OPAQUE);
		graphics.setLineStyle(Graphics.LINE_SOLID);
		Dimension size = FigureUtilities.getTextExtents(name, font);
		if (size.width > wall.width / 2 || wall.height < SMALL) {
			return;
		}
		Rectangle place = new Rectangle(wall.right() - size.width - 2 * PAD - INSET, wall.y + INSET, size.width + 2 * PAD,
				size.height + PAD);
		graphics.setBackgroundColor(ground);
		graphics.fillRoundRectangle(place, INSET, INSET);
		graphics.setFont(font);
		graphics.drawString(name, place.x + PAD, place.y + PAD / 2);
	}

	@Override
	public boolean containsPoint(int x, int y) {
		return false;
	}
}
