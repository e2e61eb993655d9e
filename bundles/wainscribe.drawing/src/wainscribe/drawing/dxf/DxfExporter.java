// SPDX-License-Identifier: EPL-2.0
package wainscribe.drawing.dxf;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;

import wainscribe.drawing.Bounds;
import wainscribe.drawing.Drawing;
import wainscribe.drawing.Layer;
import wainscribe.drawing.LayerName;
import wainscribe.drawing.Palette;
import wainscribe.drawing.StyleTable;
import wainscribe.drawing.export.ElevationExporter;
import wainscribe.drawing.text.Messages;

/**
 * Writes an elevation as a text DXF file of release 12, which nearly every drafting program reads: millimetres, true
 * size, one named layer for each layer of the drawing; dimensions as lines and text.
 */
public final class DxfExporter implements ElevationExporter {

	private static final String RELEASE_12 = "AC1009";
	private static final int MILLIMETRES = 4;

	private final StyleTable styles = Palette.paper().styles();

	@Override
	public String id() {
		return "dxf";
	}

	@Override
	public String name() {
		return Messages.DxfExporter_Name;
	}

	@Override
	public String fileExtension() {
		return "dxf";
	}

	@Override
	public void write(Drawing drawing, OutputStream out) throws IOException {
		DxfWriter writer = new DxfWriter();
		writer.pair(999, "Elevation, lengths in millimetres, true size: " + DxfText.of(drawing.title()));
		header(writer, drawing.extent());
		tables(writer);
		writer.section("BLOCKS").endSection();
		writer.section("ENTITIES");
		for (Layer layer : drawing.layers()) {
			new DxfEntities(writer, layer.name().id(), styles).write(layer.shapes());
		}
		writer.endSection().pair(0, "EOF");
		out.write(writer.text().getBytes(StandardCharsets.US_ASCII));
	}

	private static void header(DxfWriter writer, Bounds extent) {
		writer.section("HEADER");
		writer.pair(9, "$ACADVER").pair(1, RELEASE_12);
		writer.pair(9, "$INSUNITS").pair(70, MILLIMETRES);
		writer.pair(9, "$MEASUREMENT").pair(70, 1);
		writer.pair(9, "$EXTMIN").point(10, extent.x0(), extent.y0());
		writer.pair(9, "$EXTMAX").point(10, extent.x1(), extent.y1());
		writer.endSection();
	}

	private static void tables(DxfWriter writer) {
		writer.section("TABLES");
		writer.pair(0, "TABLE").pair(2, "LTYPE").pair(70, 2);
		lineType(writer, "CONTINUOUS", "Solid line", 0);
		lineType(writer, "DASHED", "Dashed line", 60);
		writer.pair(0, "ENDTAB");
		writer.pair(0, "TABLE").pair(2, "LAYER").pair(70, LayerName.values().length + 1);
		layer(writer, "0", 7, "CONTINUOUS");
		for (LayerName name : LayerName.values()) {
			layer(writer, name.id(), colour(name), name == LayerName.SERVICE ? "DASHED" : "CONTINUOUS");
		}
		writer.pair(0, "ENDTAB");
		writer.pair(0, "TABLE").pair(2, "STYLE").pair(70, 1);
		writer.pair(0, "STYLE").pair(2, "STANDARD").pair(70, 0).pair(40, 0.0).pair(41, 1.0).pair(50, 0.0).pair(71, 0)
				.pair(42, 2.5).pair(3, "txt").pair(4, "");
		writer.pair(0, "ENDTAB").endSection();
	}

	private static void lineType(DxfWriter writer, String name, String description, double dash) {
		writer.pair(0, "LTYPE").pair(2, name).pair(70, 0).pair(3, description).pair(72, 65).pair(73, dash > 0 ? 2 : 0)
				.pair(40, dash * 2);
		if (dash > 0) {
			writer.pair(49, dash).pair(49, -dash);
		}
	}

	private static void layer(DxfWriter writer, String name, int colour, String lineType) {
		writer.pair(0, "LAYER").pair(2, name).pair(70, 0).pair(62, colour).pair(6, lineType);
	}

	/** Numbers of the standard colour index: 7 black or white, 8 and 9 greys, 5 blue, 3 green, 4 cyan. */
	private static int colour(LayerName name) {
		return switch (name) {
			case HATCH, TRIM_EXISTING -> 9;
			case DIMENSION -> 8;
			case FRAME, STRIP, RAIL, BASE, CROWN -> 5;
			case SERVICE -> 3;
			case BOX -> 4;
			default -> 7;
		};
	}
}
