// SPDX-License-Identifier: EPL-2.0
package wainscribe.benchmarks.paint;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.awt.image.BufferedImage;

import wainscribe.drawing.Bounds;
import wainscribe.drawing.Dimension;
import wainscribe.drawing.Drawing;
import wainscribe.drawing.Label;
import wainscribe.drawing.Path;
import wainscribe.drawing.Point;
import wainscribe.drawing.Shape;
import wainscribe.drawing.Style;
import wainscribe.drawing.StyleTable;
import wainscribe.drawing.Tone;

/** Paints a drawing into a picture with the Java platform's own graphics, as a stand-in for a screen where there is none. */
public final class DrawingPainter {

	private final StyleTable styles;
	private final BufferedImage picture;
	private final Font font = new Font(Font.SANS_SERIF, Font.PLAIN, 1);

	/**
	 * Creates a painter.
	 *
	 * @param styles the look of each role
	 * @param width  of the picture in pixels
	 * @param height of the picture in pixels
	 */
	public DrawingPainter(StyleTable styles, int width, int height) {
		this.styles = styles;
		picture = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
	}

	/** Paints all of a drawing, as large as the picture takes it, and returns the picture, which is used again. */
	public BufferedImage paint(Drawing drawing) {
		Graphics2D graphics = picture.createGraphics();
		graphics.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
		graphics.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
		graphics.setColor(Color.WHITE);
		graphics.fillRect(0, 0, picture.getWidth(), picture.getHeight());
		Bounds extent = drawing.extent();
		double zoom = Math.min(picture.getWidth() / extent.width(), picture.getHeight() / extent.height());
		graphics.transform(new AffineTransform(zoom, 0, 0, -zoom, -extent.x0() * zoom, extent.y1() * zoom));
		drawing.shapes().forEach(shape -> paint(graphics, shape, drawing.scale()));
		graphics.dispose();
		return picture;
	}

	private void paint(Graphics2D graphics, Shape shape, double scale) {
		switch (shape) {
		case Path path -> paint(graphics, path, scale);
		case Label label -> paint(graphics, label);
		case Dimension dimension -> {
			dimension.lines().forEach(line -> paint(graphics, line, scale));
			paint(graphics, dimension.label());
		}
		}
	}

	private void paint(Graphics2D graphics, Path path, double scale) {
		Style style = styles.of(path.role());
		Path2D.Double outline = new Path2D.Double();
		outline.moveTo(path.start().x(), path.start().y());
		for (Point point : path.flattened()) {
			outline.lineTo(point.x(), point.y());
		}
		if (path.closed()) {
			outline.closePath();
		}
		if (path.closed() && style.fill().visible()) {
			graphics.setColor(colour(style.fill()));
			graphics.fill(outline);
		}
		if (style.stroke().visible()) {
			graphics.setColor(colour(style.stroke()));
			graphics.setStroke(stroke(style, scale));
			graphics.draw(outline);
		}
	}

	private static BasicStroke stroke(Style style, double scale) {
		float width = (float) (style.pen() * scale);
		if (style.dashes().isEmpty()) {
			return new BasicStroke(width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER);
		}
		float[] dashes = new float[style.dashes().size()];
		for (int i = 0; i < dashes.length; i++) {
			dashes[i] = (float) (style.dashes().get(i) * scale);
		}
		return new BasicStroke(width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER, 10, dashes, 0);
	}

	private void paint(Graphics2D graphics, Label label) {
		AffineTransform before = graphics.getTransform();
		graphics.translate(label.start().x(), label.start().y());
		if (label.upright()) {
			graphics.rotate(Math.PI / 2);
		}
		graphics.scale(1, -1);
		graphics.setFont(font.deriveFont((float) label.size()));
		graphics.setColor(colour(styles.of(label.role()).stroke()));
		graphics.drawString(label.text(), 0, 0);
		graphics.setTransform(before);
	}

	private static Color colour(Tone tone) {
		return new Color(tone.rgb());
	}
}
