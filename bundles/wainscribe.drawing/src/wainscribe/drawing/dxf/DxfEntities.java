// SPDX-License-Identifier: EPL-2.0
package wainscribe.drawing.dxf;

import java.util.List;

import wainscribe.drawing.Dimension;
import wainscribe.drawing.Label;
import wainscribe.drawing.Path;
import wainscribe.drawing.Point;
import wainscribe.drawing.Segment;
import wainscribe.drawing.Shape;
import wainscribe.drawing.StyleTable;

/** Writes the shapes of one layer as entities. Fills without a line are shading for the eye and left out. */
final class DxfEntities {

	private static final int QUARTERS = 4;

	private final DxfWriter writer;
	private final String layer;
	private final StyleTable styles;

	DxfEntities(DxfWriter writer, String layer, StyleTable styles) {
		this.writer = writer;
		this.layer = layer;
		this.styles = styles;
	}

	void write(List<Shape> shapes) {
		for (Shape shape : shapes) {
			switch (shape) {
				case Path path -> path(path);
				case Label label -> text(label);
				case Dimension dimension -> {
					dimension.lines().forEach(this::path);
					text(dimension.label());
				}
			}
		}
	}

	private void path(Path path) {
		if (!styles.of(path.role()).stroke().visible()) {
			return;
		}
		if (!path.closed() && path.segments().size() == 1) {
			single(path.start(), path.segments().getFirst());
		} else {
			polyline(path);
		}
	}

	private void single(Point start, Segment segment) {
		switch (segment) {
			case Segment.Straight line -> writer.pair(0, "LINE").pair(8, layer).point(10, start.x(), start.y()).point(11,
					line.end().x(), line.end().y());
			case Segment.Curve curve -> {
				double begin = Math.toDegrees(curve.startAngle());
				double end = begin + Math.toDegrees(curve.sweep());
				writer.pair(0, "ARC").pair(8, layer).point(10, curve.centre().x(), curve.centre().y())
						.pair(40, curve.radius()).pair(50, curve.sweep() > 0 ? begin : end)
						.pair(51, curve.sweep() > 0 ? end : begin);
			}
		}
	}

	/** An arc between two corners is told by its bulge, the tangent of a quarter of its sweep. */
	private void polyline(Path path) {
		writer.pair(0, "POLYLINE").pair(8, layer).pair(66, 1).point(10, 0, 0).pair(70, path.closed() ? 1 : 0);
		Point from = path.start();
		for (int i = 0; i < path.segments().size(); i++) {
			Segment segment = path.segments().get(i);
			vertex(from, segment instanceof Segment.Curve curve ? Math.tan(curve.sweep() / QUARTERS) : 0);
			from = segment.end();
		}
		if (!path.closed() || !from.equals(path.start())) {
			vertex(from, 0);
		}
		writer.pair(0, "SEQEND").pair(8, layer);
	}

	private void vertex(Point at, double bulge) {
		writer.pair(0, "VERTEX").pair(8, layer).point(10, at.x(), at.y());
		if (bulge != 0) {
			writer.pair(42, bulge);
		}
	}

	private void text(Label label) {
		Point start = label.start();
		writer.pair(0, "TEXT").pair(8, layer).point(10, start.x(), start.y()).pair(40, label.size() * Label.CAP_HEIGHT)
				.pair(1, DxfText.of(label.text())).pair(50, label.upright() ? 90.0 : 0.0);
		int anchor = label.anchor().ordinal();
		if (anchor > 0) {
			writer.pair(72, anchor).point(11, label.at().x(), label.at().y());
		}
	}
}
