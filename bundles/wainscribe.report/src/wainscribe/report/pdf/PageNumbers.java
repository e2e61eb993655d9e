// SPDX-License-Identifier: EPL-2.0
package wainscribe.report.pdf;

import java.io.IOException;

import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;

import wainscribe.drawing.Point;
import wainscribe.drawing.pdf.PdfCanvas;
import wainscribe.drawing.pdf.PdfTypeface;

/** Writes the foot of each page once their number is known. */
final class PageNumbers {

	private static final double FROM_EDGE = 7;
	private static final double SIDE = 14;
	private static final double SIZE = 2.6;

	private final PDDocument document;
	private final PdfTypeface face;

	PageNumbers(PDDocument document, PdfTypeface face) {
		this.document = document;
		this.face = face;
	}

	void print(String title) throws IOException {
		int count = document.getNumberOfPages();
		for (int i = 0; i < count; i++) {
			PDPage page = document.getPage(i);
			double width = page.getMediaBox().getWidth() / PdfCanvas.POINTS;
			String number = (i + 1) + " / " + count;
			try (PdfCanvas canvas = PdfCanvas.over(document, page, face)) {
				double numberWidth = face.width(number, SIZE);
				canvas.text(title, new Point(SIDE, FROM_EDGE), SIZE, Ink.SOFT, false, false, width - 2 * SIDE - numberWidth - 8);
				canvas.text(number, width - SIDE - numberWidth, FROM_EDGE, SIZE, Ink.SOFT, false);
			}
		}
	}
}
