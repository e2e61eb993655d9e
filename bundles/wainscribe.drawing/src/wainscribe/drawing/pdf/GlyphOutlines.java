// SPDX-License-Identifier: EPL-2.0
package wainscribe.drawing.pdf;

import java.awt.geom.AffineTransform;
import java.awt.geom.GeneralPath;
import java.io.Closeable;
import java.io.IOException;

import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.TrueTypeFont;

/** Outlines of the letters of {@link PdfTypeface}, for backends that have no fonts. */
public final class GlyphOutlines implements Closeable {

	private final TrueTypeFont font;
	private final FaceText text;
	private final CmapLookup glyphs;

	/**
	 * Opens the face.
	 *
	 * @throws IOException if it cannot be read
	 */
	public GlyphOutlines() throws IOException {
		font = FaceText.open();
		text = new FaceText(font);
		glyphs = font.getUnicodeCmapLookup();
	}

	/**
	 * Returns the outline of a line of text that begins at the origin, y up.
	 *
	 * @param characters any
	 * @param size       of the letters
	 * @throws IOException if the face cannot be read
	 */
	public GeneralPath of(String characters, double size) throws IOException {
		double scale = size / font.getUnitsPerEm();
		GeneralPath line = new GeneralPath();
		double x = 0;
		for (int character : text.shown(characters).codePoints().toArray()) {
			int glyph = glyphs.getGlyphId(character);
			AffineTransform place = AffineTransform.getTranslateInstance(x, 0);
			place.scale(scale, scale);
			if (font.getGlyph().getGlyph(glyph) != null) {
				line.append(place.createTransformedShape(font.getGlyph().getGlyph(glyph).getPath()), false);
			}
			x += font.getAdvanceWidth(glyph) * scale;
		}
		return line;
	}

	/**
	 * Returns the width of a text.
	 *
	 * @return in the unit of {@code size}
	 * @throws IOException if the face cannot be read
	 */
	public double width(String characters, double size) throws IOException {
		return text.width(characters, size);
	}

	@Override
	public void close() throws IOException {
		font.close();
	}
}
