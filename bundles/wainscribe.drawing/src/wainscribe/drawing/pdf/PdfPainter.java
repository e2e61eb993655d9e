// SPDX-License-Identifier: EPL-2.0
package wainscribe.drawing.pdf;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

import wainscribe.drawing.Dimension;
import wainscribe.drawing.Drawing;
import wainscribe.drawing.Label;
import wainscribe.drawing.Path;
import wainscribe.drawing.Point;
import wainscribe.drawing.Role;
import wainscribe.drawing.Segment;
import wainscribe.drawing.Shape;
import wainscribe.drawing.StyleTable;

/** Paints a drawing on a page at a scale. */
public final class PdfPainter {

	private final PdfCanvas canvas;
	private final StyleTable styles;
	private final double left;
	private final double bottom;
	private final double scale;

	/**
	 * Creates a painter.
	 *
	 * @param canvas the page
	 * @param styles the look of each role
	 * @param left   where the wall's left end comes, millimetres from the left edge of the page
	 * @param bottom where the finished floor comes, millimetres from the lower edge of the page
	 * @param scale  millimetres on the wall for one of paper
	 */
	public PdfPainter(PdfCanvas canvas, StyleTable styles, double left, double bottom, double scale) {
		this.canvas = Objects.requireNonNull(canvas);
		this.styles = Objects.requireNonNull(styles);
		this.left = left;
		this.bottom = bottom;
		this.scale = scale;
	}

	/**
	 * Paints all layers.
	 *
	 * @throws IOException if the document fails
	 */
	public void paint(Drawing drawing) throws IOException {
		for (Shape shape : drawing.shapes().toList()) {
			paint(shape);
		}
	}

	private void paint(Shape shape) throws IOException {
		switch (shape) {
			case Path path -> path(path);
			case Label label -> text(label);
			case Dimension dimension -> {
				for (Path line : dimension.lines()) {
					path(line);
				}
				text(dimension.label());
			}
		}
	}

	private void path(Path path) throws IOException {
		List<Segment> segments = new ArrayList<>();
		for (Segment segment : path.segments()) {
			segments.add(switch (segment) {
				case Segment.Straight line -> new Segment.Straight(paper(line.end()));
				case Segment.Curve curve -> new Segment.Curve(paper(curve.end()), paper(curve.centre()), curve.sweep());
			});
		}
		canvas.path(paper(path.start()), segments, path.closed(), styles.of(path.role()));
	}

	private void text(Label label) throws IOException {
		double size = label.size() / scale;
		double widest = label.width() / scale;
		double back = switch (label.anchor()) {
			case START -> 0;
			case MIDDLE -> 0.5;
			case END -> 1;
		} * Math.min(widest, canvas.face().width(label.text(), size));
		Point at = paper(label.at());
		canvas.text(label.text(), label.upright() ? at.plus(0, -back) : at.plus(-back, 0), size,
				styles.of(label.role()).stroke(), label.role() == Role.TITLE, label.upright(), widest);
	}

	private Point paper(Point wall) {
		return new Point(left + wall.x() / scale, bottom + wall.y() / scale);
	}
}
