// SPDX-License-Identifier: EPL-2.0
package wainscribe.report.pdf;

import java.io.IOException;
import java.io.OutputStream;
import java.util.List;

import org.apache.pdfbox.pdmodel.PDDocument;

import wainscribe.drawing.Style;
import wainscribe.drawing.pdf.PaperSize;
import wainscribe.drawing.pdf.PdfTypeface;
import wainscribe.report.view.BarView;
import wainscribe.report.view.CutView;
import wainscribe.report.view.CuttingView;
import wainscribe.report.view.Fact;

/**
 * Prints the sheet that lies beside the saw: what to buy and what to cut from each bar, in large type with a box to tick for
 * each length bought and each piece cut.
 */
public final class CutSheet {

	private static final long ID_SEED = 2;
	private static final double LARGE = 5.6;
	private static final double PLAIN = 4.2;
	private static final double TICK = 5.2;
	private static final double BAR = 8;
	private static final double INDENT = 9;
	/** What a bar's heading and drawing take, and the piece that must not be parted from them. */
	private static final double HEAD = 12 + 2 * LARGE + BAR + 4 * PLAIN;
	private static final double FIRST_PIECE = LARGE * 1.6 + 6 * PLAIN * 1.5;

	/**
	 * Prints the sheet.
	 *
	 * @param title what is printed at the head and the foot
	 * @param unit  how lengths are written
	 * @param plan  the plan; bars of accepted plans are printed where nothing else is to be cut
	 * @param paper size of the pages
	 * @param out   stays open
	 * @throws IOException if writing fails
	 */
	public void write(String title, String unit, CuttingView plan, PaperSize paper, OutputStream out) throws IOException {
		try (PDDocument document = new PDDocument()) {
			document.setDocumentId(ID_SEED);
			document.getDocumentInformation().setTitle(title + " \u2013 cut sheet");
			document.getDocumentCatalog().setLanguage("en");
			PdfTypeface face = new PdfTypeface(document);
			try (PageFlow flow = new PageFlow(document, face, paper)) {
				print(flow, title, unit, plan);
			}
			new PageNumbers(document, face).print(title + " \u2013 cut sheet");
			document.save(out);
		}
	}

	private static void print(PageFlow flow, String title, String unit, CuttingView plan) throws IOException {
		flow.newPage();
		flow.heading(title + ": cut sheet", 9, Ink.TEXT);
		flow.paragraph("Lengths in " + unit + " from long point to long point. Saw settings are turned from a square cut. Measure the wall"
				+ " once more before the first cut; keep hands clear of the blade, and eyes and ears covered.", PLAIN, Ink.SOFT);
		for (String note : plan.notes()) {
			flow.paragraph(note, PLAIN, Ink.WARNING);
		}
		if (!plan.buys().isEmpty()) {
			flow.space(5);
			flow.heading("Buy", 6.5, Ink.TEXT);
			for (Fact line : plan.buys()) {
				ticked(flow, line.name() + "   " + line.value(), PLAIN);
				flow.drop(1.6);
			}
		}
		List<BarView> bars = plan.bars().isEmpty() ? plan.accepted() : plan.bars();
		for (BarView bar : bars) {
			bar(flow, bar);
		}
	}

	private static void bar(PageFlow flow, BarView bar) throws IOException {
		flow.keep(HEAD + FIRST_PIECE);
		flow.space(7);
		flow.rule();
		flow.drop(2);
		flow.paragraph("Bar " + bar.number() + "   " + bar.what(), LARGE, Ink.TEXT, 0, flow.width(), true);
		flow.paragraph(bar.source() + " \u00b7 " + bar.remainder(), PLAIN, Ink.SOFT);
		flow.drop(2);
		CuttingPages.drawing(flow, bar, BAR);
		flow.drop(BAR + 2.5);
		for (CutView piece : bar.pieces()) {
			piece(flow, piece);
		}
	}

	private static void piece(PageFlow flow, CutView piece) throws IOException {
		flow.keep(LARGE * 1.6 + 3 * PLAIN * 1.5);
		ticked(flow, piece.length() + "   " + piece.label(), LARGE);
		String ends = piece.start().isEmpty() ? "" : "Left or lower end: " + piece.start() + ". Right or upper end: " + piece.end() + ".";
		String place = piece.where().isEmpty() ? piece.room() : piece.room() + ", " + piece.where();
		flow.paragraph(ends, PLAIN, Ink.TEXT, INDENT, flow.width(), false);
		flow.paragraph(place + (piece.notes().isEmpty() ? "" : "; " + piece.notes()), PLAIN, Ink.SOFT, INDENT, flow.width(), false);
		flow.drop(2);
	}

	private static void ticked(PageFlow flow, String text, double size) throws IOException {
		flow.keep(size * Ink.LEADING);
		flow.box(0, 1.4, TICK, TICK, Style.stroked(Ink.TEXT, 0.35));
		flow.paragraph(text, size, Ink.TEXT, INDENT, flow.width(), size > PLAIN);
	}
}
