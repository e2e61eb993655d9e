// SPDX-License-Identifier: EPL-2.0
package wainscribe.drawing.pdf;

import java.io.IOException;
import java.io.OutputStream;

import org.apache.pdfbox.pdmodel.PDDocument;

import wainscribe.drawing.Drawing;
import wainscribe.drawing.Palette;
import wainscribe.drawing.export.ElevationExporter;
import wainscribe.drawing.text.Messages;

/** Writes an elevation as a PDF file of one page, at a scale that measures true on paper. */
public final class PdfExporter implements ElevationExporter {

	/** The id of a document is made from this and its content instead of the time, so equal drawings give equal bytes. */
	private static final long ID_SEED = 1;

	@Override
	public String id() {
		return "pdf";
	}

	@Override
	public String name() {
		return Messages.PdfExporter_Name;
	}

	@Override
	public String fileExtension() {
		return "pdf";
	}

	@Override
	public void write(Drawing drawing, OutputStream out) throws IOException {
		try (PDDocument document = new PDDocument()) {
			document.setDocumentId(ID_SEED);
			document.getDocumentInformation().setTitle(drawing.title());
			PdfTypeface face = new PdfTypeface(document);
			SheetFit fit = SheetFit.of(drawing.unit(), scale -> drawing);
			new ElevationPage(document, face, Palette.paper().styles()).add(fit, (canvas, paper) -> {
			});
			document.save(out);
		}
	}
}
