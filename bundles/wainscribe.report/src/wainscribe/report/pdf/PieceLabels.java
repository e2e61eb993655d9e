// SPDX-License-Identifier: EPL-2.0
package wainscribe.report.pdf;

import java.io.IOException;
import java.io.OutputStream;
import java.util.List;
import java.util.stream.Stream;

import org.apache.pdfbox.pdmodel.PDDocument;

import wainscribe.drawing.Style;
import wainscribe.drawing.pdf.PaperSize;
import wainscribe.drawing.pdf.PdfTypeface;
import wainscribe.report.view.CutView;
import wainscribe.report.view.CuttingView;

/** Prints a label for every piece, to be cut out along the lines and taped to its back. */
public final class PieceLabels {

	private static final long ID_SEED = 3;
	private static final int ACROSS = 3;
	private static final double HEIGHT = 27;
	private static final double PAD = 3;
	private static final double NAME = 6;
	private static final double TEXT = 2.9;
	/** No smaller share of a text's size is read at arm's length; what is longer ends in an ellipsis. */
	private static final double SMALLEST = 0.65;

	/**
	 * Prints the labels, in the order of cutting.
	 *
	 * @param title what is printed at the foot
	 * @param plan  the plan, with the pieces of accepted plans
	 * @param paper size of the pages
	 * @param out   stays open
	 * @throws IOException if writing fails
	 */
	public void write(String title, CuttingView plan, PaperSize paper, OutputStream out) throws IOException {
		List<CutView> pieces = Stream.concat(plan.bars().stream(), plan.accepted().stream()).flatMap(bar -> bar.pieces().stream()).toList();
		try (PDDocument document = new PDDocument()) {
			document.setDocumentId(ID_SEED);
			document.getDocumentInformation().setTitle(title + " \u2013 piece labels");
			document.getDocumentCatalog().setLanguage("en");
			PdfTypeface face = new PdfTypeface(document);
			try (PageFlow flow = new PageFlow(document, face, paper)) {
				flow.newPage();
				print(flow, pieces);
			}
			new PageNumbers(document, face).print(title + " \u2013 piece labels");
			document.save(out);
		}
	}

	private static void print(PageFlow flow, List<CutView> pieces) throws IOException {
		double width = flow.width() / ACROSS;
		for (int i = 0; i < pieces.size(); i++) {
			if (i % ACROSS == 0) {
				flow.keep(HEIGHT);
			}
			label(flow, pieces.get(i), i % ACROSS * width, width);
			if (i % ACROSS == ACROSS - 1) {
				flow.drop(HEIGHT);
			}
		}
	}

	private static void label(PageFlow flow, CutView piece, double x, double width) throws IOException {
		flow.box(x, 0, width, HEIGHT, Style.stroked(Ink.LINE, 0.2, 1.0, 1.0));
		TextLines lines = new TextLines(flow.face());
		double size = fitting(flow, piece.label(), NAME, width - 2 * PAD);
		flow.put(piece.label(), x + PAD, PAD + NAME * 0.8, size, Ink.TEXT, true);
		flow.put(piece.length(), x + PAD, PAD + NAME + 4.2, 4.2, Ink.TEXT, false);
		double below = PAD + NAME + 8.2;
		for (String text : List.of(piece.room(), piece.where(), piece.profile())) {
			double small = Math.max(TEXT * SMALLEST, fitting(flow, text, TEXT, width - 2 * PAD));
			List<String> parts = lines.of(text, small, width - 2 * PAD);
			flow.put(parts.size() > 1 ? parts.getFirst() + " \u2026" : parts.getFirst(), x + PAD, below, small, Ink.SOFT, false);
			below += TEXT * 1.35;
		}
	}

	/** A long label is written smaller, so that it stays whole. */
	private static double fitting(PageFlow flow, String text, double size, double width) throws IOException {
		double wanted = flow.face().width(text, size);
		return wanted <= width ? size : size * width / wanted;
	}
}
