// SPDX-License-Identifier: EPL-2.0
package wainscribe.drawing.pdf;

import java.awt.Color;
import java.io.Closeable;
import java.io.IOException;
import java.util.List;

import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.PDPageContentStream.AppendMode;
import org.apache.pdfbox.pdmodel.graphics.state.RenderingMode;
import org.apache.pdfbox.util.Matrix;

import wainscribe.drawing.Bounds;
import wainscribe.drawing.Point;
import wainscribe.drawing.Segment;
import wainscribe.drawing.Style;
import wainscribe.drawing.Tone;

/** A page on which everything is measured in millimetres from its lower left corner. */
public final class PdfCanvas implements Closeable {

	/** Points of 1/72 in (ISO 32000-1, 8.3.2.3) in a millimetre. */
	public static final double POINTS = 72 / 25.4;

	private static final double BOLD_STROKE = 0.024;
	private static final double QUARTER = Math.PI / 2;

	private final PDPageContentStream stream;
	private final PdfTypeface face;

	/**
	 * Opens a page for drawing.
	 *
	 * @param document the document
	 * @param page     one of its pages, empty
	 * @param face     the face of its text
	 * @throws IOException if the document fails
	 */
	public PdfCanvas(PDDocument document, PDPage page, PdfTypeface face) throws IOException {
		this(new PDPageContentStream(document, page), face);
	}

	private PdfCanvas(PDPageContentStream stream, PdfTypeface face) throws IOException {
		this.stream = stream;
		this.face = face;
		stream.setLineCapStyle(1);
		stream.setLineJoinStyle(1);
	}

	/**
	 * Opens a page on which something is drawn already.
	 *
	 * @param document the document
	 * @param page     one of its pages
	 * @param face     the face of its text
	 * @throws IOException if the document fails
	 */
	public static PdfCanvas over(PDDocument document, PDPage page, PdfTypeface face) throws IOException {
		return new PdfCanvas(new PDPageContentStream(document, page, AppendMode.APPEND, true, true), face);
	}

	/** Returns the face of the text. */
	public PdfTypeface face() {
		return face;
	}

	/**
	 * Draws lines and arcs.
	 *
	 * @param start    where they begin
	 * @param segments the strokes
	 * @param closed   whether a line leads back
	 * @param style    pen in millimetres, dashes in millimetres; a fill fills a closed path only
	 * @throws IOException if the document fails
	 */
	public void path(Point start, List<Segment> segments, boolean closed, Style style) throws IOException {
		boolean fill = closed && style.fill().visible();
		boolean line = style.stroke().visible();
		if (!fill && !line) {
			return;
		}
		stream.moveTo(points(start.x()), points(start.y()));
		Point from = start;
		for (Segment segment : segments) {
			switch (segment) {
				case Segment.Straight straight -> stream.lineTo(points(straight.end().x()), points(straight.end().y()));
				case Segment.Curve curve -> curve(from, curve);
			}
			from = segment.end();
		}
		if (closed) {
			stream.closePath();
		}
		if (fill) {
			stream.setNonStrokingColor(colour(style.fill()));
		}
		if (line) {
			pen(style);
		}
		if (fill && line) {
			stream.fillAndStroke();
		} else if (fill) {
			stream.fill();
		} else {
			stream.stroke();
		}
	}

	/** Draws a straight line. */
	public void line(double x0, double y0, double x1, double y1, Style style) throws IOException {
		path(new Point(x0, y0), List.of(new Segment.Straight(new Point(x1, y1))), false, style);
	}

	/** Draws an upright rectangle. */
	public void box(Bounds bounds, Style style) throws IOException {
		path(new Point(bounds.x0(), bounds.y0()), List.of(new Segment.Straight(new Point(bounds.x1(), bounds.y0())),
				new Segment.Straight(new Point(bounds.x1(), bounds.y1())),
				new Segment.Straight(new Point(bounds.x0(), bounds.y1()))), true, style);
	}

	private void pen(Style style) throws IOException {
		stream.setStrokingColor(colour(style.stroke()));
		stream.setLineWidth(points(style.pen()));
		float[] dashes = new float[style.dashes().size()];
		for (int i = 0; i < dashes.length; i++) {
			dashes[i] = points(style.dashes().get(i));
		}
		stream.setLineDashPattern(dashes, 0);
	}

	/** A quarter of a circle or less is one cubic curve whose handles are 4/3 tan(sweep/4) radii long. */
	private void curve(Point start, Segment.Curve curve) throws IOException {
		int parts = Math.max(1, (int) Math.ceil(Math.abs(curve.sweep()) / QUARTER - 1e-9));
		double step = curve.sweep() / parts;
		double handle = 4.0 / 3 * Math.tan(step / 4);
		Point centre = curve.centre();
		Point from = start;
		for (int i = 1; i <= parts; i++) {
			double angle = curve.startAngle() + step * i;
			Point to = i == parts ? curve.end()
					: centre.plus(curve.radius() * Math.cos(angle), curve.radius() * Math.sin(angle));
			stream.curveTo(points(from.x() - handle * (from.y() - centre.y())),
					points(from.y() + handle * (from.x() - centre.x())), points(to.x() + handle * (to.y() - centre.y())),
					points(to.y() - handle * (to.x() - centre.x())), points(to.x()), points(to.y()));
			from = to;
		}
	}

	/**
	 * Writes one line of text.
	 *
	 * @param text    any characters
	 * @param at      where the base line begins
	 * @param size    of the letters in millimetres
	 * @param tone    colour
	 * @param bold    whether the letters are thickened
	 * @param upright whether the text reads upwards
	 * @param widest  letters are narrowed if the text would be wider than this, millimetres
	 * @throws IOException if the document fails
	 */
	public void text(String text, Point at, double size, Tone tone, boolean bold, boolean upright, double widest)
			throws IOException {
		String shown = face.shown(text);
		if (shown.isBlank()) {
			return;
		}
		double width = face.width(shown, size);
		stream.beginText();
		stream.setFont(face.font(), points(size));
		stream.setNonStrokingColor(colour(tone));
		stream.setStrokingColor(colour(tone));
		stream.setLineWidth(points(bold ? size * BOLD_STROKE : 0));
		stream.setLineDashPattern(new float[0], 0);
		stream.setRenderingMode(bold ? RenderingMode.FILL_STROKE : RenderingMode.FILL);
		stream.setHorizontalScaling(width > widest ? (float) (100 * widest / width) : 100);
		stream.setTextMatrix(upright ? new Matrix(0, 1, -1, 0, points(at.x()), points(at.y()))
				: Matrix.getTranslateInstance(points(at.x()), points(at.y())));
		stream.showText(shown);
		stream.endText();
	}

	/** Writes one line of level text as wide as it is. */
	public void text(String text, double x, double y, double size, Tone tone, boolean bold) throws IOException {
		text(text, new Point(x, y), size, tone, bold, false, Double.POSITIVE_INFINITY);
	}

	private static float points(double millimetres) {
		return (float) (millimetres * POINTS);
	}

	private static Color colour(Tone tone) {
		return new Color(tone.rgb());
	}

	@Override
	public void close() throws IOException {
		stream.close();
	}
}
