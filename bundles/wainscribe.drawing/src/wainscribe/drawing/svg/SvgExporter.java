// SPDX-License-Identifier: EPL-2.0
package wainscribe.drawing.svg;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;

import wainscribe.drawing.Drawing;
import wainscribe.drawing.Palette;
import wainscribe.drawing.export.ElevationExporter;
import wainscribe.drawing.text.Messages;

/** Writes an elevation as an SVG file, one millimetre on the wall as one millimetre, one group for each layer. */
public final class SvgExporter implements ElevationExporter {

	@Override
	public String id() {
		return "svg";
	}

	@Override
	public String name() {
		return Messages.SvgExporter_Name;
	}

	@Override
	public String fileExtension() {
		return "svg";
	}

	@Override
	public void write(Drawing drawing, OutputStream out) throws IOException {
		SvgLook look = SvgLook.written(Palette.paper().styles(), drawing.scale());
		out.write(new SvgWriter(look).document(drawing).getBytes(StandardCharsets.UTF_8));
	}
}
