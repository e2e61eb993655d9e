// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.elevation.overview;

import java.util.Objects;

import org.eclipse.draw2d.geometry.Rectangle;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.graphics.GC;

import wainscribe.model.Placed;
import wainscribe.model.Wall;
import wainscribe.model.outline.Outline;
import wainscribe.model.outline.Outlines;
import wainscribe.model.outline.WallShape;
import wainscribe.ui.drafting.appearance.Appearance;
import wainscribe.ui.drafting.appearance.TableColours;
import wainscribe.ui.elevation.table.DrawingTable;
import wainscribe.ui.elevation.table.FrameKey;
import wainscribe.ui.elevation.table.Projection;
import wainscribe.ui.elevation.table.StripKey;

/** Paints the walls small, and the rectangle round what is in view. */
final class OverviewPainter {

	private static final int VIEW_ALPHA = 40;
	private static final int OPAQUE = 255;
	private static final int VIEW_LINE = 2;

	private final DrawingTable table;
	private final TableColours colours;
	private final OverviewMap map;

	OverviewPainter(DrawingTable table, OverviewMap map) {
		this.table = Objects.requireNonNull(table);
		this.colours = table.colours();
		this.map = Objects.requireNonNull(map);
	}

	/**
	 * Paints.
	 *
	 * @param gc     where
	 * @param view   pixels of the drawing that are in view
	 * @param active whether the overview has the keyboard
	 */
	void paint(GC gc, Rectangle view, boolean active) {
		gc.setAntialias(SWT.ON);
		gc.setBackground(Appearance.colour(colours.ruler()));
		gc.fillRectangle(gc.getClipping());
		table.walls().forEach(wall -> paint(gc, wall));
		Rectangle seen = map.small(view.getIntersection(table.area()));
		Color select = Appearance.colour(colours.select());
		gc.setBackground(select);
		gc.setAlpha(VIEW_ALPHA);
		gc.fillRectangle(seen.x, seen.y, seen.width, seen.height);
		gc.setAlpha(OPAQUE);
		gc.setForeground(select);
		gc.setLineWidth(active ? VIEW_LINE + 1 : VIEW_LINE);
		gc.drawRectangle(seen.x, seen.y, seen.width, seen.height);
		gc.setLineWidth(1);
	}

	private void paint(GC gc, Wall wall) {
		Projection place = table.placeOf(wall);
		Rectangle pixels = map.small(place.pixels(table.drawingOf(wall).wall()));
		gc.setBackground(Appearance.colour(colours.drawing().wall()));
		gc.setForeground(Appearance.colour(colours.rulerInk()));
		gc.fillRectangle(pixels.x, pixels.y, pixels.width, pixels.height);
		table.design().layout().rail().ifPresent(rail -> {
			Outline band = new Outline(wainscribe.model.length.Length.ZERO, rail.bottom(), WallShape.of(wall).length(), rail.top());
			Rectangle line = map.small(place.pixels(band));
			gc.drawLine(line.x, line.y, line.right() - 1, line.y);
		});
		FrameKey.of(table.design(), wall).forEach(key -> key.in(table.design()).map(FrameKey::outline)
				.ifPresent(outline -> box(gc, map.small(place.pixels(outline)))));
		StripKey.of(table.design(), wall).forEach(key -> key.in(table.design())
				.map(strip -> new Outline(strip.x(), strip.y(), strip.right(), strip.top()))
				.ifPresent(outline -> box(gc, map.small(place.pixels(outline)))));
		wall.getOpenings().forEach(opening -> thing(gc, place, opening));
		wall.getFixtures().forEach(fixture -> thing(gc, place, fixture));
		box(gc, pixels);
	}

	private void thing(GC gc, Projection place, Placed thing) {
		if (thing.getX() != null && thing.getY() != null) {
			Rectangle pixels = map.small(place.pixels(Outlines.of(thing)));
			gc.setBackground(Appearance.colour(colours.drawing().ground()));
			gc.fillRectangle(pixels.x, pixels.y, pixels.width, pixels.height);
			box(gc, pixels);
		}
	}

	private static void box(GC gc, Rectangle pixels) {
		gc.drawRectangle(pixels.x, pixels.y, Math.max(1, pixels.width - 1), Math.max(1, pixels.height - 1));
	}
}
