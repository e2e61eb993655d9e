// SPDX-License-Identifier: EPL-2.0
package wainscribe.report.pdf;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;

import wainscribe.drawing.pdf.PdfTypeface;

/** Breaks text into lines. */
final class TextLines {

	private final PdfTypeface face;

	TextLines(PdfTypeface face) {
		this.face = face;
	}

	/**
	 * Breaks a text between words, and inside a word that is wider than a line.
	 *
	 * @param size  of the letters
	 * @param width of a line, in the unit of {@code size}
	 * @return at least one line
	 */
	List<String> of(String text, double size, double width) throws IOException {
		List<String> lines = new ArrayList<>();
		StringBuilder line = new StringBuilder();
		for (String word : face.shown(text).strip().split("\\s+")) {
			String longer = line.isEmpty() ? word : line + " " + word;
			if (face.width(longer, size) <= width) {
				line.setLength(0);
				line.append(longer);
				continue;
			}
			if (!line.isEmpty()) {
				lines.add(line.toString());
			}
			line.setLength(0);
			line.append(broken(word, size, width, lines));
		}
		lines.add(line.toString());
		return lines;
	}

	/** Adds the full lines of a long word and returns its rest. */
	private String broken(String word, double size, double width, List<String> lines) throws IOException {
		StringBuilder part = new StringBuilder();
		for (int character : word.codePoints().toArray()) {
			String longer = part + Character.toString(character);
			if (!part.isEmpty() && face.width(longer, size) > width) {
				lines.add(part.toString());
				part.setLength(0);
			}
			part.appendCodePoint(character);
		}
		return part.toString();
	}
}
