// SPDX-License-Identifier: EPL-2.0
package wainscribe.examples.exporter;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.Comparator;
import java.util.List;

import org.eclipse.osgi.util.NLS;

import wainscribe.drawing.Dimension;
import wainscribe.drawing.Dimension.Axis;
import wainscribe.drawing.Drawing;
import wainscribe.drawing.LayerName;
import wainscribe.drawing.export.DrawingText;
import wainscribe.drawing.export.ElevationExporter;
import wainscribe.model.length.Length;
import wainscribe.model.length.LengthFormat;

/**
 * Example of an exporter: the measures of a wall as plain text, one a line, to take along on a slip of paper.
 * <p>
 * An exporter sees only the drawing: layers of shapes in millimetres on the wall. It writes the same bytes for the same drawing
 * and leaves the stream open.
 */
public final class MarkListExporter implements ElevationExporter {

	@Override
	public String id() {
		return "example-marks"; //$NON-NLS-1$
	}

	@Override
	public String name() {
		return Messages.MarkListExporter_Name;
	}

	@Override
	public String fileExtension() {
		return "txt"; //$NON-NLS-1$
	}

	@Override
	public void write(Drawing drawing, OutputStream out) throws IOException {
		StringBuilder text = new StringBuilder(DrawingText.clean(drawing.title())).append('\n');
		append(text, drawing, Axis.LEVEL, Messages.MarkListExporter_Level);
		append(text, drawing, Axis.PLUMB, Messages.MarkListExporter_Plumb);
		out.write(text.toString().getBytes(StandardCharsets.UTF_8));
	}

	private static void append(StringBuilder text, Drawing drawing, Axis axis, String heading) {
		List<Dimension> measures = drawing.shapes(LayerName.DIMENSION).stream().filter(Dimension.class::isInstance)
				.map(Dimension.class::cast).filter(dimension -> dimension.axis() == axis)
				.sorted(Comparator.comparing(Dimension::from).thenComparing(Dimension::to)).toList();
		text.append('\n').append(heading).append('\n');
		measures.stream().map(measure -> line(drawing, measure)).distinct()
				.forEach(line -> text.append(line).append('\n'));
	}

	private static String line(Drawing drawing, Dimension measure) {
		return NLS.bind(Messages.MarkListExporter_Line, new Object[] { shown(drawing, measure.from()),
				shown(drawing, measure.to()), shown(drawing, measure.length()) });
	}

	private static String shown(Drawing drawing, Length length) {
		return LengthFormat.asTapeMark(length, drawing.unit());
	}
}
