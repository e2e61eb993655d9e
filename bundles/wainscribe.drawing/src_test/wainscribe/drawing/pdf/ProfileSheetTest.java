// SPDX-License-Identifier: EPL-2.0
package wainscribe.drawing.pdf;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;

import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;

import wainscribe.model.length.LengthUnit;
import wainscribe.profile.BuiltInProfiles;
import wainscribe.profile.TrimProfile;

/** Sheets are printed to pixels of a tenth of a millimetre and measured there. */
class ProfileSheetTest {

	private static final int PIXELS = 10;
	private static final float DPI = (float) (PIXELS * 25.4);

	private static TrimProfile profile(String id) {
		return BuiltInProfiles.catalogue().find(id).orElseThrow();
	}

	private static byte[] sheet(TrimProfile profile, LengthUnit unit) throws IOException {
		ByteArrayOutputStream out = new ByteArrayOutputStream();
		new ProfileSheet(unit).write(profile, out);
		return out.toByteArray();
	}

	@Test
	void theSectionIsPrintedInItsTrueSize() throws IOException {
		for (String id : new String[] { "bead-18", "ogee-crown-80", "ogee-base-120", "thumb-28x12" }) {
			TrimProfile profile = profile(id);
			try (PDDocument document = Loader.loadPDF(sheet(profile, LengthUnit.MILLIMETRE))) {
				Ink wood = Ink.of(new PDFRenderer(document).renderImageWithDPI(0, DPI), ProfileSheet.WOOD.rgb());
				assertEquals(profile.thickness().approximateMillimetres(), wood.width() / (double) PIXELS, 0.6, id);
				assertEquals(profile.face().approximateMillimetres(), wood.height() / (double) PIXELS, 0.6, id);
				double inked = profile.girthMillimetres() * 0.5;
				assertEquals(profile.areaSquareMillimetres(), wood.count() / (double) (PIXELS * PIXELS), inked, id);
			}
		}
	}

	@Test
	void theRuleIsExactlyAsLongAsItSays() throws IOException {
		assertEquals(100, ruleLength(LengthUnit.MILLIMETRE), 0.25);
		assertEquals(101.6, ruleLength(LengthUnit.INCH), 0.25);
	}

	/** The rule is the lowest line of the sheet. */
	private static double ruleLength(LengthUnit unit) throws IOException {
		try (PDDocument document = Loader.loadPDF(sheet(profile("fillet-30"), unit))) {
			BufferedImage image = new PDFRenderer(document).renderImageWithDPI(0, DPI);
			for (int y = image.getHeight() - 1; y > 0; y--) {
				int first = -1;
				int last = -1;
				for (int x = 0; x < image.getWidth(); x++) {
					if ((image.getRGB(x, y) & 0xff) < 0x80) {
						first = first < 0 ? x : first;
						last = x;
					}
				}
				if (last > first) {
					return (last - first - 1) / (double) PIXELS;
				}
			}
			return 0;
		}
	}

	@Test
	void nameMeasuresGirthAndAreaAreWritten() throws IOException {
		try (PDDocument document = Loader.loadPDF(sheet(profile("fillet-30"), LengthUnit.MILLIMETRE))) {
			String text = new PDFTextStripper().getText(document);
			for (String expected : new String[] { "Flat fillet, 30 mm x 9 mm", "Girth 48.0 mm, area 270 mm²", "This rule is 100 mm long",
					"can be coped", "Profile fillet-30" }) {
				assertTrue(text.contains(expected), text);
			}
		}
		try (PDDocument document = Loader.loadPDF(sheet(profile("fillet-1.5in"), LengthUnit.INCH))) {
			assertTrue(new PDFTextStripper().getText(document).contains("Girth 2.25 in, area 0.563 sq in"));
		}
	}

	@Test
	void theSameProfileGivesTheSameBytesAndALargeOneALargerSheet() throws IOException {
		TrimProfile base = profile("square-base-280x20");
		assertArrayEquals(sheet(base, LengthUnit.MILLIMETRE), sheet(base, LengthUnit.MILLIMETRE));
		try (PDDocument document = Loader.loadPDF(sheet(base, LengthUnit.MILLIMETRE))) {
			assertEquals(420 * PdfCanvas.POINTS, document.getPage(0).getMediaBox().getHeight(), 0.01);
		}
	}

	/** Extent and number of the pixels of one colour. */
	private record Ink(int left, int right, int top, int bottom, int count) {

		static Ink of(BufferedImage image, int rgb) {
			int left = Integer.MAX_VALUE;
			int right = -1;
			int top = Integer.MAX_VALUE;
			int bottom = -1;
			int count = 0;
			for (int y = 0; y < image.getHeight(); y++) {
				for (int x = 0; x < image.getWidth(); x++) {
					if ((image.getRGB(x, y) & 0xffffff) == rgb) {
						left = Math.min(left, x);
						right = Math.max(right, x);
						top = Math.min(top, y);
						bottom = Math.max(bottom, y);
						count++;
					}
				}
			}
			return new Ink(left, right, top, bottom, count);
		}

		int width() {
			return right - left + 1;
		}

		int height() {
			return bottom - top + 1;
		}
	}
}
