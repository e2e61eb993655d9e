// SPDX-License-Identifier: EPL-2.0
package wainscribe.drawing.png;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.AffineTransform;
import java.awt.geom.GeneralPath;
import java.awt.geom.Path2D;
import java.awt.image.BufferedImage;
import java.io.Closeable;
import java.io.IOException;
import java.util.List;

import wainscribe.drawing.Bounds;
import wainscribe.drawing.Dimension;
import wainscribe.drawing.Drawing;
import wainscribe.drawing.Label;
import wainscribe.drawing.Palette;
import wainscribe.drawing.Path;
import wainscribe.drawing.Point;
import wainscribe.drawing.Shape;
import wainscribe.drawing.Style;
import wainscribe.drawing.StyleTable;
import wainscribe.drawing.pdf.GlyphOutlines;

/** Paints a drawing into a picture. Letters are drawn by their outlines, so no font of the machine is needed. */
final class PngPainter implements Closeable {

	private final Graphics2D graphics;
	private final StyleTable styles;
	private final GlyphOutlines glyphs;

	PngPainter(BufferedImage image, Bounds extent, double pixels, Palette palette) throws IOException {
		glyphs = new GlyphOutlines();
		styles = palette.styles();
		graphics = image.createGraphics();
		graphics.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
		graphics.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
		graphics.setColor(new Color(palette.ground().rgb()));
		graphics.fillRect(0, 0, image.getWidth(), image.getHeight());
		graphics.scale(pixels, -pixels);
		graphics.translate(-extent.x0(), -extent.y1());
	}

	void paint(Drawing drawing) throws IOException {
		for (Shape shape : drawing.shapes().toList()) {
			switch (shape) {
				case Path path -> path(path, drawing.scale());
				case Label label -> text(label);
				case Dimension dimension -> {
					dimension.lines().forEach(line -> path(line, drawing.scale()));
					text(dimension.label());
				}
			}
		}
	}

	private void path(Path path, double paper) {
		Style style = styles.of(path.role());
		Path2D outline = new Path2D.Double();
		List<Point> corners = path.flattened();
		outline.moveTo(corners.getFirst().x(), corners.getFirst().y());
		corners.stream().skip(1).forEach(corner -> outline.lineTo(corner.x(), corner.y()));
		if (path.closed()) {
			outline.closePath();
		}
		if (path.closed() && style.fill().visible()) {
			graphics.setColor(new Color(style.fill().rgb()));
			graphics.fill(outline);
		}
		if (style.stroke().visible()) {
			graphics.setColor(new Color(style.stroke().rgb()));
			graphics.setStroke(stroke(style, paper));
			graphics.draw(outline);
		}
	}

	private static BasicStroke stroke(Style style, double paper) {
		float width = (float) (style.pen() * paper);
		if (style.dashes().isEmpty()) {
			return new BasicStroke(width, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND);
		}
		float[] dashes = new float[style.dashes().size()];
		for (int i = 0; i < dashes.length; i++) {
			dashes[i] = (float) (style.dashes().get(i) * paper);
		}
		return new BasicStroke(width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 1, dashes, 0);
	}

	private void text(Label label) throws IOException {
		GeneralPath letters = glyphs.of(label.text(), label.size());
		double width = glyphs.width(label.text(), label.size());
		double narrow = width > label.width() ? label.width() / width : 1;
		double back = switch (label.anchor()) {
			case START -> 0;
			case MIDDLE -> 0.5;
			case END -> 1;
		} * width * narrow;
		AffineTransform place = AffineTransform.getTranslateInstance(label.at().x(), label.at().y());
		if (label.upright()) {
			place.quadrantRotate(1);
		}
		place.translate(-back, 0);
		place.scale(narrow, 1);
		graphics.setColor(new Color(styles.of(label.role()).stroke().rgb()));
		graphics.fill(place.createTransformedShape(letters));
	}

	@Override
	public void close() throws IOException {
		graphics.dispose();
		glyphs.close();
	}
}
