// SPDX-License-Identifier: EPL-2.0
package wainscribe.report.pdf;

import java.io.Closeable;
import java.io.IOException;
import java.util.List;

import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.PDRectangle;

import wainscribe.drawing.Bounds;
import wainscribe.drawing.Style;
import wainscribe.drawing.Tone;
import wainscribe.drawing.pdf.PaperSize;
import wainscribe.drawing.pdf.PdfCanvas;
import wainscribe.drawing.pdf.PdfTypeface;

/** Text that flows down pages of one size and on to the next. Measures in millimetres. */
final class PageFlow implements Closeable {

	private static final double SIDE = 22;
	private static final double TOP = 24;
	private static final double BOTTOM = 24;

	private final PDDocument document;
	private final PdfTypeface face;
	private final PaperSize paper;
	private PdfCanvas canvas;
	private PDPage page;
	private double y;

	PageFlow(PDDocument document, PdfTypeface face, PaperSize paper) {
		this.document = document;
		this.face = face;
		this.paper = paper;
	}

	double width() {
		return paper.width() - 2 * SIDE;
	}

	double left() {
		return SIDE;
	}

	PdfTypeface face() {
		return face;
	}

	/** Returns the page on which the next line comes. */
	PDPage page() {
		return page;
	}

	/** Begins a new page. */
	void newPage() throws IOException {
		close();
		page = new PDPage(
				new PDRectangle((float) (paper.width() * PdfCanvas.POINTS), (float) (paper.height() * PdfCanvas.POINTS)));
		document.addPage(page);
		canvas = new PdfCanvas(document, page, face);
		y = paper.height() - TOP;
	}

	/** Begins a new page if less than a height is left; tells whether it did. */
	boolean keep(double height) throws IOException {
		if (canvas != null && y - height >= BOTTOM) {
			return false;
		}
		newPage();
		return true;
	}

	/** Leaves room, unless the page has just begun. */
	void space(double height) {
		if (y < paper.height() - TOP) {
			y -= height;
		}
	}

	/** Leaves room also at the top of a page. */
	void drop(double height) {
		y -= height;
	}

	/** Writes a heading that stays with what follows. */
	void heading(String text, double size, Tone tone) throws IOException {
		List<String> lines = new TextLines(face).of(text, size, width());
		keep(size * 1.25 * lines.size() + 20);
		for (String line : lines) {
			y -= size * 1.25;
			canvas.text(line, SIDE, y + size * 0.28, size, tone, size < 6);
		}
		y -= size * 0.35;
	}

	/** Writes running text. */
	void paragraph(String text, double size, Tone tone) throws IOException {
		paragraph(text, size, tone, 0, width(), false);
	}

	/** Writes running text in a part of the width. */
	void paragraph(String text, double size, Tone tone, double indent, double width, boolean bold) throws IOException {
		for (String line : new TextLines(face).of(text, size, width - indent)) {
			keep(size * Ink.LEADING);
			y -= size * Ink.LEADING;
			canvas.text(line, SIDE + indent, y + size * 0.35, size, tone, bold);
		}
	}

	/** Writes one line at a place across; the flow does not move on. */
	void put(String text, double x, double below, double size, Tone tone, boolean bold) throws IOException {
		canvas.text(text, SIDE + x, y - below, size, tone, bold);
	}

	/** Draws a box below the last line; the flow does not move on. */
	void box(double x, double below, double width, double height, Style style) throws IOException {
		canvas.box(new Bounds(SIDE + x, y - below - height, SIDE + x + width, y - below), style);
	}

	/** Draws a line across. */
	void rule() throws IOException {
		canvas.line(SIDE, y, SIDE + width(), y, Ink.rule());
	}

	@Override
	public void close() throws IOException {
		if (canvas != null) {
			canvas.close();
			canvas = null;
		}
	}
}
