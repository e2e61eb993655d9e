// SPDX-License-Identifier: EPL-2.0
package wainscribe.drawing.pdf;

import java.io.IOException;

import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;

/**
 * The one face of a document, embedded as a subset: the sans-serif face that comes with PDFBox (SIL Open Font License
 * 1.1), with Latin, Greek and Cyrillic letters. What it lacks is shown by a replacement mark, never refused.
 */
public final class PdfTypeface {

	private final PDType0Font font;
	private final FaceText text;

	/**
	 * Embeds the face in a document.
	 *
	 * @param document which closes the face when it is closed
	 * @throws IOException if the face cannot be read
	 */
	public PdfTypeface(PDDocument document) throws IOException {
		TrueTypeFont face = FaceText.open();
		document.registerTrueTypeFontForClosing(face);
		font = PDType0Font.load(document, face, true);
		text = new FaceText(face);
	}

	PDFont font() {
		return font;
	}

	/** Returns the text as it will be shown: what the face lacks replaced, what nobody sees left out. */
	public String shown(String characters) {
		return text.shown(characters);
	}

	/**
	 * Returns the width of a text as it will be shown.
	 *
	 * @return in the unit of {@code size}
	 * @throws IOException if the face cannot be read
	 */
	public double width(String characters, double size) throws IOException {
		return text.width(characters, size);
	}
}
