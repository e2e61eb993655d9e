// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.elevation.painting;

import java.util.ArrayList;
import java.util.List;

import org.eclipse.draw2d.Graphics;
import org.eclipse.draw2d.geometry.Rectangle;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Device;
import org.eclipse.swt.graphics.Font;

import wainscribe.drawing.Dimension;
import wainscribe.drawing.Drawing;
import wainscribe.drawing.Label;
import wainscribe.drawing.Path;
import wainscribe.drawing.Point;
import wainscribe.drawing.Segment;
import wainscribe.drawing.Shape;
import wainscribe.drawing.Style;
import wainscribe.drawing.StyleTable;
import wainscribe.ui.drafting.appearance.Appearance;
import wainscribe.ui.drafting.painting.Letters;
import wainscribe.ui.elevation.table.Projection;

/**
 * Paints a neutral drawing on the screen, sharp at any scale: paths go to the screen with fractions of a pixel, and text is
 * set in the size it has there. Leaves out what lies outside the part to be painted.
 */
public final class DrawingPainter {

	/** Room for line widths and for letters that a face sets a little wider than planned. */
	private static final int SLACK = 3;
	private static final double QUARTER_TURN = -90;
	private static final int OPAQUE = 255;
	private static final double FAINTEST = 0.45;

	private final Graphics graphics;
	private final Projection projection;
	private final StyleTable styles;
	private final Letters letters;
	private final double pixelsPerPaperMillimetre;

	/**
	 * Creates a painter for one pass.
	 *
	 * @param graphics   where to paint
	 * @param projection where the wall lies
	 * @param styles     looks of the roles
	 * @param letters    fonts
	 * @param paper      pixels for one millimetre of paper, for widths of lines
	 */
	public DrawingPainter(Graphics graphics, Projection projection, StyleTable styles, Letters letters, double paper) {
		this.graphics = graphics;
		this.projection = projection;
		this.styles = styles;
		this.letters = letters;
		this.pixelsPerPaperMillimetre = paper;
	}

	/** Paints what lies in the clip. */
	public void paint(Drawing drawing) {
		Rectangle clip = graphics.getClip(new Rectangle()).expand(SLACK, SLACK);
		graphics.setAntialias(SWT.ON);
		graphics.setTextAntialias(SWT.ON);
		drawing.shapes().filter(shape -> projection.pixels(shape.bounds()).expand(SLACK, SLACK).intersects(clip))
				.forEach(this::paint);
	}

	private void paint(Shape shape) {
		switch (shape) {
			case Path path -> paint(path);
			case Label label -> paint(label);
			case Dimension dimension -> {
				dimension.lines().forEach(this::paint);
				paint(dimension.label());
			}
		}
	}

	private void paint(Path path) {
		Style style = styles.of(path.role());
		org.eclipse.swt.graphics.Path outline = outline(path);
		try {
			if (path.closed() && style.fill().visible()) {
				graphics.setAlpha(OPAQUE);
				graphics.setBackgroundColor(Appearance.colour(style.fill()));
				graphics.fillPath(outline);
			}
			if (style.stroke().visible() && style.pen() > 0) {
				stroke(path, outline, style);
			}
		} finally {
			outline.dispose();
			graphics.setAlpha(OPAQUE);
		}
	}

	/** Pens thinner than a pixel are painted a pixel wide and fainter. */
	private void stroke(Path path, org.eclipse.swt.graphics.Path outline, Style style) {
		double pen = style.pen() * pixelsPerPaperMillimetre;
		graphics.setForegroundColor(Appearance.colour(style.stroke()));
		graphics.setAlpha((int) Math.round(OPAQUE * Math.max(FAINTEST, Math.min(1, pen))));
		graphics.setLineWidth(Math.max(1, (int) Math.round(pen)));
		if (style.dashes().isEmpty()) {
			graphics.drawPath(outline);
		} else {
			org.eclipse.swt.graphics.Path dashes = dashes(path, style);
			graphics.drawPath(dashes);
			dashes.dispose();
		}
	}

	/** All dashes of a path go to the screen in one stroke. */
	private org.eclipse.swt.graphics.Path dashes(Path path, Style style) {
		double mm = pixelsPerPaperMillimetre / projection.scale();
		org.eclipse.swt.graphics.Path all = new org.eclipse.swt.graphics.Path(device());
		Dashes.of(path, style.dashes(), mm).forEach(piece -> add(all, piece));
		return all;
	}

	private org.eclipse.swt.graphics.Path outline(Path path) {
		boolean curved = path.segments().stream().anyMatch(Segment.Curve.class::isInstance);
		return polyline(curved ? path.flattened() : straight(path), path.closed());
	}

	private static List<Point> straight(Path path) {
		List<Point> points = new ArrayList<>(path.segments().size() + 1);
		points.add(path.start());
		path.segments().forEach(segment -> points.add(segment.end()));
		return points;
	}

	private org.eclipse.swt.graphics.Path polyline(List<Point> points, boolean closed) {
		org.eclipse.swt.graphics.Path outline = new org.eclipse.swt.graphics.Path(device());
		add(outline, points);
		if (closed) {
			outline.close();
		}
		return outline;
	}

	private void add(org.eclipse.swt.graphics.Path outline, List<Point> points) {
		boolean first = true;
		for (Point point : points) {
			float x = (float) projection.x(point.x());
			float y = (float) projection.y(point.y());
			if (first) {
				outline.moveTo(x, y);
				first = false;
			} else {
				outline.lineTo(x, y);
			}
		}
	}

	private Device device() {
		return letters.device();
	}

	private void paint(Label label) {
		double size = label.size() * projection.scale();
		Point start = label.start();
		int x = (int) Math.round(projection.x(start.x()));
		int y = (int) Math.round(projection.y(start.y()));
		Font font = letters.ofSize(size);
		graphics.setFont(font);
		graphics.setForegroundColor(Appearance.colour(styles.of(label.role()).stroke()));
		int ascent = letters.baseline(font);
		if (label.upright()) {
			graphics.pushState();
			graphics.translate(x, y);
			graphics.rotate((float) QUARTER_TURN);
			graphics.drawString(label.text(), 0, -ascent);
			graphics.popState();
		} else {
			graphics.drawString(label.text(), x, y - ascent);
		}
	}
}
