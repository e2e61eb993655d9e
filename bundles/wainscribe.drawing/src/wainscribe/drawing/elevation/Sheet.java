// SPDX-License-Identifier: EPL-2.0
package wainscribe.drawing.elevation;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

import wainscribe.drawing.Bounds;
import wainscribe.drawing.Dimension;
import wainscribe.drawing.Label;
import wainscribe.drawing.Layer;
import wainscribe.drawing.LayerName;
import wainscribe.drawing.Path;
import wainscribe.drawing.Point;
import wainscribe.drawing.Role;
import wainscribe.drawing.Shape;
import wainscribe.drawing.Subject;
import wainscribe.drawing.TextMetrics;

/** What has been drawn so far, by layer. */
final class Sheet {

	private final Map<LayerName, List<Shape>> shapes = new EnumMap<>(LayerName.class);
	private final ElevationOptions options;
	private final TextMetrics metrics;

	Sheet(ElevationOptions options, TextMetrics metrics) {
		this.options = options;
		this.metrics = metrics;
	}

	ElevationOptions options() {
		return options;
	}

	TextMetrics metrics() {
		return metrics;
	}

	/** Returns millimetres of paper as millimetres on the wall. */
	double paper(double millimetres) {
		return millimetres * options.scale();
	}

	void add(LayerName layer, Shape shape) {
		if (options.layers().contains(layer)) {
			shapes.computeIfAbsent(layer, name -> new ArrayList<>()).add(shape);
		}
	}

	void line(LayerName layer, Subject subject, Role role, double x0, double y0, double x1, double y1) {
		add(layer, Path.line(subject, role, new Point(x0, y0), new Point(x1, y1)));
	}

	void box(LayerName layer, Subject subject, Role role, Bounds bounds) {
		add(layer, Path.rectangle(subject, role, bounds));
	}

	Label label(Subject subject, Role role, String text, Point at, double paperSize, Label.Anchor anchor,
			boolean upright) {
		double size = paper(paperSize);
		return new Label(subject, role, text, at, size, metrics.width(text, size), anchor, upright);
	}

	/** Returns where texts stand, those of dimensions among them. */
	Stream<Bounds> texts() {
		return shapes.values().stream().flatMap(List::stream).flatMap(shape -> switch (shape) {
			case Label label -> Stream.of(label.bounds());
			case Dimension dimension -> Stream.of(dimension.label().bounds());
			default -> Stream.empty();
		});
	}

	/** Returns the bounds of everything drawn and of the given rectangle. */
	Bounds extent(Bounds atLeast) {
		return shapes.values().stream().flatMap(List::stream).map(Shape::bounds).reduce(atLeast, Bounds::union);
	}

	/** Returns the layers wanted in the order in which they are painted, empty ones left out. */
	List<Layer> layers() {
		return shapes.entrySet().stream().map(entry -> new Layer(entry.getKey(), entry.getValue())).toList();
	}
}
