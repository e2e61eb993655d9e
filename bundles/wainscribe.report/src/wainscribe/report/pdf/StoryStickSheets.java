// SPDX-License-Identifier: EPL-2.0
package wainscribe.report.pdf;

import java.io.IOException;
import java.io.OutputStream;
import java.util.List;

import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.PDRectangle;

import wainscribe.drawing.pdf.PaperSize;
import wainscribe.drawing.pdf.PdfCanvas;
import wainscribe.drawing.pdf.PdfTypeface;
import wainscribe.model.length.LengthUnit;
import wainscribe.report.view.StickView;

/**
 * Prints story sticks at full size: strips to be cut out and joined at their register crosses, a few on each sheet, and on every
 * sheet a check ruler that tells whether the printer kept the scale.
 */
public final class StoryStickSheets {

	private static final long ID_SEED = 4;
	private static final double SIDE = 15;
	private static final double TOP = 8;
	private static final double STRIP = 34;
	private static final double BETWEEN = 1;
	private static final double FOOT = 27;
	private static final double TITLE = 3.6;
	private static final double TEXT = 2.6;

	private final LengthUnit unit;
	private final PaperSize paper;
	private final StripScale scale;

	/**
	 * Creates a printer.
	 *
	 * @param unit unit of the tape: decides the paper, the ruler's scale and how much of a stick one strip carries
	 */
	public StoryStickSheets(LengthUnit unit) {
		this.unit = unit;
		paper = PaperSize.small(unit).turned();
		scale = StripScale.of(unit);
	}

	/** A page in the making. */
	private static final class Sheet implements AutoCloseable {

		private final PdfCanvas canvas;

		Sheet(PDDocument document, PdfTypeface face, PaperSize paper) throws IOException {
			PDPage page = new PDPage(
					new PDRectangle((float) (paper.width() * PdfCanvas.POINTS), (float) (paper.height() * PdfCanvas.POINTS)));
			document.addPage(page);
			canvas = new PdfCanvas(document, page, face);
		}

		@Override
		public void close() throws IOException {
			canvas.close();
		}
	}

	/**
	 * Prints the sticks, each beginning on a strip of its own.
	 *
	 * @param title what the sheets are of
	 * @param sticks at least one
	 * @param out   stays open
	 * @throws IOException if writing fails
	 */
	public void write(String title, List<StickView> sticks, OutputStream out) throws IOException {
		try (PDDocument document = new PDDocument()) {
			document.setDocumentId(ID_SEED);
			document.getDocumentInformation().setTitle(title + " \u2013 story sticks");
			document.getDocumentCatalog().setLanguage("en");
			PdfTypeface face = new PdfTypeface(document);
			List<StickStrip> strips = sticks.stream().flatMap(stick -> StickStrip.of(stick, scale).stream()).toList();
			int perSheet = (int) ((paper.height() - TOP - FOOT) / (STRIP + BETWEEN));
			for (int from = 0; from < strips.size(); from += perSheet) {
				try (Sheet sheet = new Sheet(document, face, paper)) {
					List<StickStrip> here = strips.subList(from, Math.min(strips.size(), from + perSheet));
					for (int i = 0; i < here.size(); i++) {
						new StripPainter(sheet.canvas, scale).paint(here.get(i), SIDE, paper.height() - TOP - (STRIP + BETWEEN) * (i + 1), STRIP);
					}
					foot(sheet.canvas, title + " \u2013 sheet " + (from / perSheet + 1) + " of " + Math.ceilDiv(strips.size(), perSheet));
				}
			}
			document.save(out);
		}
	}

	/** The check ruler, and what to do with it. */
	private void foot(PdfCanvas canvas, String title) throws IOException {
		double y = FOOT - 12;
		canvas.line(SIDE, y, SIDE + scale.check(), y, Ink.line());
		for (int i = 0; i <= scale.checkSteps(); i++) {
			double x = SIDE + i * scale.check() / scale.checkSteps();
			boolean whole = i % scale.checkNumbered() == 0;
			canvas.line(x, y, x, y + (whole ? 4 : 2), Ink.line());
			if (whole) {
				canvas.text(String.valueOf(i / scale.checkNumbered() * scale.checkNumber()), x - 1, y + 4.8, TEXT, Ink.TEXT, false);
			}
		}
		double text = SIDE + scale.check() + 8;
		canvas.text(title, text, y + 4.6, TITLE, Ink.TEXT, true);
		canvas.text("Print at actual size (100 %). Lay a rule on this scale: it must measure " + scale.checkText() + ".", text, y, TEXT,
				Ink.TEXT, false);
		canvas.text("If it does not, do not use the sheet: set the marks out from the list.", text, y - 4, TEXT, Ink.TEXT, false);
		canvas.text("Cut the strips out and lay cross on cross (a on a, b on b); the marks are rounded to "
				+ (unit == LengthUnit.INCH ? "1/16 in" : "1 mm") + " once, from the datum.", SIDE, y - 8, TEXT, Ink.SOFT, false);
	}
}
