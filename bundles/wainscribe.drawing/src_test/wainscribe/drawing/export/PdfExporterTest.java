// SPDX-License-Identifier: EPL-2.0
package wainscribe.drawing.export;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.geom.Point2D;
import java.util.ArrayList;
import java.util.List;

import org.apache.pdfbox.Loader;
import org.apache.pdfbox.contentstream.PDFGraphicsStreamEngine;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.graphics.image.PDImage;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;

import wainscribe.drawing.pdf.PdfExporter;
import wainscribe.drawing.pdf.ScaleBar;
import wainscribe.model.length.LengthUnit;

class PdfExporterTest {

	private static final double MILLIMETRES = 25.4 / 72;

	/** Collects the straight strokes of a page, in millimetres of paper. */
	private static final class Strokes extends PDFGraphicsStreamEngine {
		private final List<double[]> strokes = new ArrayList<>();
		private Point2D at = new Point2D.Float();

		Strokes(PDPage page) {
			super(page);
		}

		@Override
		public void moveTo(float x, float y) {
			at = new Point2D.Float(x, y);
		}

		@Override
		public void lineTo(float x, float y) {
			strokes.add(new double[] { at.getX() * MILLIMETRES, at.getY() * MILLIMETRES, x * MILLIMETRES, y * MILLIMETRES });
			at = new Point2D.Float(x, y);
		}

		@Override
		public void curveTo(float x1, float y1, float x2, float y2, float x3, float y3) {
			at = new Point2D.Float(x3, y3);
		}

		@Override
		public Point2D getCurrentPoint() {
			return at;
		}

		boolean hasLevel(double length) {
			return strokes.stream().anyMatch(stroke -> Math.abs(stroke[1] - stroke[3]) < 0.001
					&& Math.abs(Math.abs(stroke[2] - stroke[0]) - length) < 0.01);
		}

		@Override
		public void appendRectangle(Point2D p0, Point2D p1, Point2D p2, Point2D p3) {
		}

		@Override
		public void drawImage(PDImage image) {
		}

		@Override
		public void clip(int windingRule) {
		}

		@Override
		public void closePath() {
		}

		@Override
		public void endPath() {
		}

		@Override
		public void strokePath() {
		}

		@Override
		public void fillPath(int windingRule) {
		}

		@Override
		public void fillAndStrokePath(int windingRule) {
		}

		@Override
		public void shadingFill(COSName name) {
		}
	}

	private static Strokes strokes(PDDocument document) throws Exception {
		Strokes strokes = new Strokes(document.getPage(0));
		strokes.processPage(document.getPage(0));
		return strokes;
	}

	@Test
	void aMetreMeasuresFiftyMillimetresAtOneToTwenty() throws Exception {
		try (PDDocument document = Loader.loadPDF(Exported.bytes(new PdfExporter(), "A"))) {
			String text = new PDFTextStripper().getText(document);
			assertTrue(text.contains("Scale 1:20 on A4"), text);
			Strokes strokes = strokes(document);
			assertTrue(strokes.hasLevel(1000 / 20.0), "the frame is 1000 mm wide");
			assertTrue(strokes.hasLevel(3000 / 20.0), "the wall is 3000 mm long");
			ScaleBar bar = new ScaleBar(LengthUnit.MILLIMETRE, 20);
			assertTrue(strokes.hasLevel(bar.length() / 4 / 20), "fields of the scale bar");
		}
	}

	@Test
	void anInchHomeGetsAnInchScaleOnLetterPaper() throws Exception {
		byte[] bytes = Exported.bytes(new PdfExporter(), Exported.drawing("A", LengthUnit.INCH));
		try (PDDocument document = Loader.loadPDF(bytes)) {
			String text = new PDFTextStripper().getText(document);
			// 1/2 in on paper for 12 in on the wall is 1:24.
			assertTrue(text.contains("Scale 1/2\" = 1'-0\" on Letter"), text);
			assertTrue(strokes(document).hasLevel(3000 / 24.0));
		}
	}

	@Test
	void anyNameIsShownOrMarked() throws Exception {
		String name = "P\u0159\u00edzem\u00ed \u4e2d\u6587 \ud83d\udecb\ufe0f <b>";
		try (PDDocument document = Loader.loadPDF(Exported.bytes(new PdfExporter(), name))) {
			String text = new PDFTextStripper().getText(document);
			assertTrue(text.contains("P\u0159\u00edzem\u00ed"), text);
			assertTrue(text.contains("<b>"), text);
			assertEquals(3, text.codePoints().filter(c -> c == 0xfffd || c == 0x25a1).count(), "three signs no face has");
		}
	}

	@Test
	void equalDrawingsGiveEqualBytes() throws Exception {
		assertArrayEquals(Exported.bytes(new PdfExporter(), "A"), Exported.bytes(new PdfExporter(), "A"));
	}
}
