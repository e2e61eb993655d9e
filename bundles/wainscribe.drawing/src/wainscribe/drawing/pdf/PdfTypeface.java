// SPDX-License-Identifier: EPL-2.0
package wainscribe.drawing.pdf;

import java.io.IOException;
import java.io.InputStream;

import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;

import wainscribe.drawing.export.DrawingText;

/**
 * The one face of a document, embedded as a subset: the sans-serif face that comes with PDFBox (SIL Open Font License
 * 1.1), with Latin, Greek and Cyrillic letters. What it lacks is shown by a replacement mark, never refused.
 */
public final class PdfTypeface {

	private static final String RESOURCE = "/org/apache/pdfbox/resources/ttf/LiberationSans-Regular.ttf"; //$NON-NLS-1$
	private static final int[] MARKS = { DrawingText.REPLACEMENT, 0x25A1, '?' };

	private final PDType0Font font;
	private final TrueTypeFont face;
	private final int unitsPerSize;
	private final CmapLookup glyphs;
	private final int mark;

	/**
	 * Embeds the face in a document.
	 *
	 * @param document which closes the face when it is closed
	 * @throws IOException if the face cannot be read
	 */
	public PdfTypeface(PDDocument document) throws IOException {
		try (InputStream stream = PDFont.class.getResourceAsStream(RESOURCE)) {
			if (stream == null) {
				throw new IOException("PDFBox comes without its face: " + RESOURCE); //$NON-NLS-1$
			}
			face = new TTFParser().parse(new RandomAccessReadBuffer(stream));
			// Ligatures would take the letters of names apart from their widths and make each text slow to write.
			face.setEnableGsub(false);
			document.registerTrueTypeFontForClosing(face);
			glyphs = face.getUnicodeCmapLookup();
			font = PDType0Font.load(document, face, true);
		}
		unitsPerSize = face.getUnitsPerEm();
		mark = mark(glyphs);
	}

	private static int mark(CmapLookup glyphs) {
		for (int candidate : MARKS) {
			if (glyphs.getGlyphId(candidate) > 0) {
				return candidate;
			}
		}
		return '?';
	}

	PDFont font() {
		return font;
	}

	/** Returns the text as it will be shown: what the face lacks replaced, what nobody sees left out. */
	public String shown(String text) {
		StringBuilder shown = new StringBuilder();
		DrawingText.clean(text).codePoints().forEach(character -> {
			if (glyphs.getGlyphId(character) > 0) {
				shown.appendCodePoint(character);
			} else if (!isUnseen(character)) {
				shown.appendCodePoint(mark);
			}
		});
		return shown.toString();
	}

	/** Joiners, variation selectors and combining marks change the sign before them; on their own they are nothing. */
	private static boolean isUnseen(int character) {
		return switch (Character.getType(character)) {
			case Character.FORMAT, Character.NON_SPACING_MARK, Character.ENCLOSING_MARK -> true;
			default -> false;
		};
	}

	/**
	 * Returns the width of a text as it will be shown.
	 *
	 * @return in the unit of {@code size}
	 * @throws IOException if the face cannot be read
	 */
	public double width(String text, double size) throws IOException {
		long units = 0;
		for (int character : shown(text).codePoints().toArray()) {
			units += face.getAdvanceWidth(glyphs.getGlyphId(character));
		}
		return units * size / unitsPerSize;
	}
}
