// SPDX-License-Identifier: EPL-2.0
package wainscribe.report.pdf;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;

import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.Test;

import wainscribe.drawing.pdf.PdfTypeface;

class TextLinesTest {

	@Test
	void linesBreakBetweenWordsAndNeverLeaveTheirWidth() throws Exception {
		try (PDDocument document = new PDDocument()) {
			PdfTypeface face = new PdfTypeface(document);
			String text = "A rail that stands proud of the casing " + "x".repeat(200) + " needs a return.";
			List<String> lines = new TextLines(face).of(text, 3.4, 60);
			for (String line : lines) {
				assertTrue(face.width(line, 3.4) <= 60, line);
			}
			assertEquals(text.replace(" ", ""), String.join("", lines).replace(" ", ""));
			assertEquals("A rail that stands proud of the casing", lines.getFirst());
		}
	}

	@Test
	void anEmptyTextIsOneEmptyLine() throws Exception {
		try (PDDocument document = new PDDocument()) {
			assertEquals(List.of(""), new TextLines(new PdfTypeface(document)).of("  ", 3.4, 60));
		}
	}
}
