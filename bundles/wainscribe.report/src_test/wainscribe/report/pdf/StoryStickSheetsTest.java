// SPDX-License-Identifier: EPL-2.0
package wainscribe.report.pdf;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;

import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;

import org.junit.jupiter.api.Test;

import wainscribe.model.length.LengthUnit;
import wainscribe.report.view.StickView;
import wainscribe.report.view.StickView.MarkView;

class StoryStickSheetsTest {

	/** Ten dots a millimetre. */
	private static final float DPI = 254;
	private static final int DOTS = 10;
	/** Strokes are 0.25 mm wide. */
	private static final int STROKE = 2;
	/** Left of the datum stands a tab with the name. */
	private static final int DATUM = 25 * DOTS;

	private static StickView stick(double length, int marks) {
		List<MarkView> views = new ArrayList<>();
		for (int i = 1; i <= marks; i++) {
			views.add(new MarkView(length * i / (marks + 1), "mark " + i));
		}
		return new StickView("Reading room, wall A, along the wall", false, length, views);
	}

	private static byte[] pdf(LengthUnit unit, StickView... sticks) throws IOException {
		ByteArrayOutputStream out = new ByteArrayOutputStream();
		new StoryStickSheets(unit).write("Schoolhouse", List.of(sticks), out);
		return out.toByteArray();
	}

	@Test
	void aLongWallTakesAsManySheetsAsItNeedsAndEachHasACheckRuler() throws IOException {
		// 4200 mm in strips of 240 mm are 18, five on a sheet
		try (PDDocument document = Loader.loadPDF(pdf(LengthUnit.MILLIMETRE, stick(4200, 8)))) {
			assertEquals(4, document.getNumberOfPages());
			for (int page = 1; page <= 4; page++) {
				PDFTextStripper text = new PDFTextStripper();
				text.setStartPage(page);
				text.setEndPage(page);
				String words = text.getText(document);
				assertTrue(words.contains("exactly 100 mm"), words);
				assertTrue(words.contains("sheet " + page + " of 4"), words);
			}
		}
	}

	@Test
	void inchSheetsAreCheckedAgainstFourInches() throws IOException {
		try (PDDocument document = Loader.loadPDF(pdf(LengthUnit.INCH, stick(600, 4)))) {
			assertTrue(new PDFTextStripper().getText(document).contains("exactly 4 in"));
			assertEquals(279.4, document.getPage(0).getMediaBox().getWidth() / 72 * 25.4, 0.01);
		}
	}

	/** Measured on the picture of the sheet: the ruler's ends are 100 mm apart, and so are a stick's datum and its mark there. */
	@Test
	void theSheetIsAtFullSize() throws IOException {
		StickView stick = new StickView("wall A", false, 200, List.of(new MarkView(100, "100  A1")));
		try (PDDocument document = Loader.loadPDF(pdf(LengthUnit.MILLIMETRE, stick))) {
			BufferedImage image = new PDFRenderer(document).renderImageWithDPI(0, DPI);
			int ruler = image.getHeight() - (int) ((27 - 12 + 3.2) * DOTS);
			int[] scale = ends(image, 0, ruler);
			assertEquals(100 * DOTS, scale[1] - scale[0], 2);
			int strip = image.getHeight() - (210 - 8 - 35 + 7) * DOTS;
			int[] marks = ends(image, DATUM, strip);
			assertEquals(100 * DOTS, marks[1] - marks[0], 2);
		}
	}

	/** Returns where the first and the last stroke of a line begin, from a place on. */
	private static int[] ends(BufferedImage image, int from, int y) {
		int first = -1;
		int last = -1;
		for (int x = from; x < image.getWidth(); x++) {
			int rgb = image.getRGB(x, y);
			if ((rgb >> 16 & 0xff) < 110) {
				first = first < 0 ? x : first;
				last = x;
			}
		}
		return new int[] { first, last - STROKE };
	}

	/** Law: strips follow each other without a gap, and each mark is on the strip it belongs to and on the overlap beside it. */
	@Property(tries = 200)
	void everyMarkIsOnItsStrip(@ForAll long seed, @ForAll @IntRange(min = 1, max = 9000) int length, @ForAll boolean inches) {
		Random random = new Random(seed);
		StripScale scale = StripScale.of(inches ? LengthUnit.INCH : LengthUnit.MILLIMETRE);
		StickView stick = stick(length, 1 + random.nextInt(30));
		List<StickStrip> strips = StickStrip.of(stick, scale);
		double at = 0;
		for (StickStrip strip : strips) {
			assertEquals(at, strip.from(), 1e-9);
			at = strip.to();
		}
		assertEquals(length, at, 1e-9);
		for (MarkView mark : stick.marks()) {
			for (StickStrip strip : strips) {
				boolean belongs = mark.at() >= strip.from() && mark.at() <= strip.to();
				assertTrue(!belongs || strip.marks().contains(mark));
			}
		}
	}

	@Test
	void registersGoOnAfterTheAlphabet() {
		assertEquals("a", StripPainter.letters(0));
		assertEquals("z", StripPainter.letters(25));
		assertEquals("aa", StripPainter.letters(26));
		assertEquals("ab", StripPainter.letters(27));
	}
}
