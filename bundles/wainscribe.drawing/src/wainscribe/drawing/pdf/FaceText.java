// SPDX-License-Identifier: EPL-2.0
package wainscribe.drawing.pdf;

import java.io.IOException;
import java.io.InputStream;

import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.pdmodel.font.PDFont;

import wainscribe.drawing.export.DrawingText;

/**
 * What a face can show of a text: what it lacks is replaced by a mark that can be seen, never refused.
 *
 * @see PdfTypeface
 */
final class FaceText {

	private static final String RESOURCE = "/org/apache/pdfbox/resources/ttf/LiberationSans-Regular.ttf"; //$NON-NLS-1$
	private static final int[] MARKS = { DrawingText.REPLACEMENT, 0x25A1, '?' };

	private final TrueTypeFont face;
	private final CmapLookup glyphs;
	private final int unitsPerSize;
	private final int mark;

	FaceText(TrueTypeFont face) throws IOException {
		this.face = face;
		glyphs = face.getUnicodeCmapLookup();
		unitsPerSize = face.getUnitsPerEm();
		mark = mark(glyphs);
	}

	/** Opens the face that comes with PDFBox; who opens it closes it. */
	static TrueTypeFont open() throws IOException {
		try (InputStream stream = PDFont.class.getResourceAsStream(RESOURCE)) {
			if (stream == null) {
				throw new IOException("PDFBox comes without its face: " + RESOURCE); //$NON-NLS-1$
			}
			TrueTypeFont face = new TTFParser().parse(new RandomAccessReadBuffer(stream));
			// Ligatures would take the letters of names apart from their widths and make each text slow to write.
			face.setEnableGsub(false);
			return face;
		}
	}

	private static int mark(CmapLookup glyphs) {
		for (int candidate : MARKS) {
			if (glyphs.getGlyphId(candidate) > 0) {
				return candidate;
			}
		}
		return '?';
	}

	String shown(String text) {
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

	double width(String text, double size) throws IOException {
		long units = 0;
		for (int character : shown(text).codePoints().toArray()) {
			units += face.getAdvanceWidth(glyphs.getGlyphId(character));
		}
		return units * size / unitsPerSize;
	}
}
