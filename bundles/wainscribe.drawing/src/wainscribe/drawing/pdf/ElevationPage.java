// SPDX-License-Identifier: EPL-2.0
package wainscribe.drawing.pdf;

import java.io.IOException;

import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.PDRectangle;

import wainscribe.drawing.Palette;
import wainscribe.drawing.StyleTable;
import wainscribe.drawing.Tone;
import wainscribe.drawing.text.Messages;

/** Puts one elevation on a page of its own, at a stated scale and with a bar to check it. */
public final class ElevationPage {

	private static final double FROM_EDGE = 12;
	private static final double NOTE_SIZE = 2.6;

	private final PDDocument document;
	private final PdfTypeface face;
	private final StyleTable styles;

	/**
	 * Creates a maker of pages.
	 *
	 * @param document to which pages are added
	 * @param face     its face
	 * @param styles   the look of each role
	 */
	public ElevationPage(PDDocument document, PdfTypeface face, StyleTable styles) {
		this.document = document;
		this.face = face;
		this.styles = styles;
	}

	/** Writes what else belongs on the page. */
	@FunctionalInterface
	public interface Furniture {
		/** Writes on the open page. */
		void write(PdfCanvas canvas, PaperSize paper) throws IOException;
	}

	/**
	 * Adds a page.
	 *
	 * @param fit       the drawing, its paper and its scale
	 * @param furniture writes heading and foot
	 * @return the page
	 * @throws IOException if the document fails
	 */
	public PDPage add(SheetFit fit, Furniture furniture) throws IOException {
		PaperSize paper = fit.paper();
		PDPage page = new PDPage(new PDRectangle((float) (paper.width() * PdfCanvas.POINTS),
				(float) (paper.height() * PdfCanvas.POINTS)));
		document.addPage(page);
		Palette palette = Palette.paper();
		try (PdfCanvas canvas = new PdfCanvas(document, page, face)) {
			new PdfPainter(canvas, styles, fit.left(), fit.bottom(), fit.scale().ratio()).paint(fit.drawing());
			new ScaleBar(fit.drawing().unit(), fit.scale().ratio()).draw(canvas, FROM_EDGE + 2, FROM_EDGE, palette.ink(),
					palette.ground());
			note(canvas, fit, palette.note());
			furniture.write(canvas, paper);
		}
		return page;
	}

	private static void note(PdfCanvas canvas, SheetFit fit, Tone tone) throws IOException {
		double bar = new ScaleBar(fit.drawing().unit(), fit.scale().ratio()).length() / fit.scale().ratio();
		String text = Messages.ElevationPage_Scale.replace("{0}", fit.scale().label()).replace("{1}", fit.paper().name()); //$NON-NLS-1$ //$NON-NLS-2$
		canvas.text(text, FROM_EDGE + bar + 10, FROM_EDGE + 0.2, NOTE_SIZE, tone, false);
	}
}
