// SPDX-License-Identifier: EPL-2.0
package wainscribe.examples;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;

import org.junit.jupiter.api.Test;

import wainscribe.drawing.Bounds;
import wainscribe.drawing.Dimension;
import wainscribe.drawing.Dimension.Axis;
import wainscribe.drawing.Drawing;
import wainscribe.drawing.Label;
import wainscribe.drawing.Layer;
import wainscribe.drawing.LayerName;
import wainscribe.drawing.Point;
import wainscribe.drawing.Role;
import wainscribe.drawing.Shape;
import wainscribe.drawing.Subject;
import wainscribe.examples.exporter.MarkListExporter;
import wainscribe.model.length.Length;
import wainscribe.model.length.LengthUnit;

class MarkListExporterTest {

	private static Shape measure(Axis axis, long from, long to) {
		Label label = new Label(Subject.NONE, Role.DIMENSION_TEXT, "", new Point(0, 0), 10, 10, Label.Anchor.MIDDLE, false);
		return new Dimension(Subject.NONE, axis, Length.ofInches(from), Length.ofInches(to), label, List.of());
	}

	@Test
	void writesEachMeasureOnceInOrder() throws IOException {
		Bounds bounds = new Bounds(0, 0, 100, 100);
		List<Shape> shapes = List.of(measure(Axis.LEVEL, 3, 19), measure(Axis.LEVEL, 0, 3), measure(Axis.LEVEL, 0, 3),
				measure(Axis.PLUMB, 0, 36));
		Drawing drawing = new Drawing("Hall,\nwall A", LengthUnit.INCH, 20, bounds, bounds,
				List.of(new Layer(LayerName.DIMENSION, shapes)));
		ByteArrayOutputStream out = new ByteArrayOutputStream();
		new MarkListExporter().write(drawing, out);
		assertEquals("""
				Hall, wall A

				Along the wall, from its left end
				0" to 3": 3"
				3" to 1' 7": 1' 4"

				Up the wall, from the floor
				0" to 3': 3'
				""", out.toString(StandardCharsets.UTF_8));
	}
}
