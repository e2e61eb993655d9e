// SPDX-License-Identifier: EPL-2.0
package wainscribe.drawing.export;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import wainscribe.drawing.dxf.DxfExporter;
import wainscribe.drawing.pdf.PdfExporter;
import wainscribe.drawing.png.PngExporter;
import wainscribe.drawing.svg.SvgExporter;

/** The kinds of files an elevation can be written to, each id once. Immutable. */
public final class ExporterCatalogue {

	private final Map<String, ElevationExporter> byId;

	/**
	 * Creates a catalogue.
	 *
	 * @param exporters in the order shown; of two with one id the first stays
	 */
	public ExporterCatalogue(List<? extends ElevationExporter> exporters) {
		Map<String, ElevationExporter> map = new LinkedHashMap<>();
		exporters.forEach(exporter -> map.putIfAbsent(exporter.id(), exporter));
		byId = map;
	}

	/** Returns the exporters that come with the suite, for use without an extension registry. */
	public static ExporterCatalogue builtIn() {
		return new ExporterCatalogue(List.of(new SvgExporter(), new DxfExporter(), new PdfExporter(), new PngExporter()));
	}

	/** Finds an exporter by its id. */
	public Optional<ElevationExporter> find(String id) {
		return Optional.ofNullable(byId.get(id));
	}

	/** Returns all exporters in their order. */
	public List<ElevationExporter> all() {
		return List.copyOf(byId.values());
	}
}
