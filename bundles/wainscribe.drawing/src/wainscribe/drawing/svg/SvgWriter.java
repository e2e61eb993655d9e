// SPDX-License-Identifier: EPL-2.0
package wainscribe.drawing.svg;

import java.util.Locale;
import java.util.Objects;

import wainscribe.drawing.Bounds;
import wainscribe.drawing.Dimension;
import wainscribe.drawing.Drawing;
import wainscribe.drawing.Label;
import wainscribe.drawing.Layer;
import wainscribe.drawing.Path;
import wainscribe.drawing.Segment;
import wainscribe.drawing.Shape;
import wainscribe.drawing.export.DrawingText;

/**
 * Writes a drawing as an SVG element (W3C SVG 1.1). One user unit is one millimetre on the wall.
 */
public final class SvgWriter {

	private static final String FACE = "Helvetica, Arial, 'Liberation Sans', sans-serif";

	private final SvgLook look;

	/**
	 * Creates a writer.
	 *
	 * @param look how shapes get their look
	 */
	public SvgWriter(SvgLook look) {
		this.look = Objects.requireNonNull(look);
	}

	/**
	 * Writes a document of its own whose size is that of the wall in millimetres.
	 *
	 * @return a whole XML document
	 */
	public String document(Drawing drawing) {
		Bounds extent = drawing.extent();
		String size = " width=\"" + SvgNumber.of(extent.width()) + "mm\" height=\"" + SvgNumber.of(extent.height()) + "mm\"";
		return "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n" + svg(drawing, "drawing", drawing.title(), size, true);
	}

	/**
	 * Writes an element to be set into a page, as wide as the page wants.
	 *
	 * @param id          begins the ids of title and description; unique in the page
	 * @param description what the drawing shows, for those who cannot see it
	 * @return an svg element without a declaration
	 */
	public String element(Drawing drawing, String id, String description) {
		return svg(drawing, id, description, "", false);
	}

	private String svg(Drawing drawing, String id, String description, String size, boolean layerIds) {
		Bounds extent = drawing.extent();
		StringBuilder svg = new StringBuilder("<svg xmlns=\"http://www.w3.org/2000/svg\" version=\"1.1\"").append(size);
		svg.append(" viewBox=\"").append(SvgNumber.of(extent.x0())).append(' ').append(SvgNumber.of(-extent.y1())).append(' ')
				.append(SvgNumber.of(extent.width())).append(' ').append(SvgNumber.of(extent.height())).append("\" role=\"img\"")
				.append(" aria-labelledby=\"").append(id).append("-title ").append(id).append("-desc\" font-family=\"")
				.append(FACE).append("\">\n");
		svg.append("<title id=\"").append(id).append("-title\">").append(DrawingText.xml(drawing.title())).append("</title>\n");
		svg.append("<desc id=\"").append(id).append("-desc\">").append(DrawingText.xml(description)).append("</desc>\n");
		for (Layer layer : drawing.layers()) {
			svg.append(layerIds ? "<g id=\"" : "<g data-layer=\"").append(layer.name().id()).append("\">\n");
			layer.shapes().forEach(shape -> shape(svg, shape));
			svg.append("</g>\n");
		}
		return svg.append("</svg>\n").toString();
	}

	private void shape(StringBuilder svg, Shape shape) {
		switch (shape) {
			case Path path -> path(svg, path);
			case Label label -> text(svg, label);
			case Dimension dimension -> {
				dimension.lines().forEach(line -> path(svg, line));
				text(svg, dimension.label());
			}
		}
	}

	private void path(StringBuilder svg, Path path) {
		svg.append("<path d=\"M").append(SvgNumber.of(path.start().x())).append(' ').append(SvgNumber.of(-path.start().y()));
		for (Segment segment : path.segments()) {
			switch (segment) {
				case Segment.Straight straight -> svg.append('L');
				case Segment.Curve curve -> svg.append('A').append(SvgNumber.of(curve.radius())).append(' ')
						.append(SvgNumber.of(curve.radius())).append(" 0 ").append(Math.abs(curve.sweep()) > Math.PI ? 1 : 0)
						.append(' ').append(curve.sweep() > 0 ? 0 : 1).append(' ');
			}
			svg.append(SvgNumber.of(segment.end().x())).append(' ').append(SvgNumber.of(-segment.end().y()));
		}
		svg.append(path.closed() ? "Z\"" : "\"").append(look.path(path.role())).append("/>\n");
	}

	private void text(StringBuilder svg, Label label) {
		String x = SvgNumber.of(label.at().x());
		String y = SvgNumber.of(-label.at().y());
		svg.append("<text x=\"").append(x).append("\" y=\"").append(y).append("\" font-size=\"")
				.append(SvgNumber.of(label.size())).append("\" text-anchor=\"")
				.append(label.anchor().name().toLowerCase(Locale.ROOT)).append('"');
		if (label.upright()) {
			svg.append(" transform=\"rotate(-90 ").append(x).append(' ').append(y).append(")\"");
		}
		svg.append(look.text(label.role())).append('>').append(DrawingText.xml(label.text())).append("</text>\n");
	}
}
