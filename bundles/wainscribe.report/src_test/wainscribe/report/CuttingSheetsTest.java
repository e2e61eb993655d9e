// SPDX-License-Identifier: EPL-2.0
package wainscribe.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.StringWriter;
import java.util.List;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;

import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

import wainscribe.drawing.pdf.PaperSize;
import wainscribe.model.Brief;
import wainscribe.model.WainscribeFactory;
import wainscribe.model.length.Length;
import wainscribe.model.length.LengthUnit;
import wainscribe.report.html.PackPage;
import wainscribe.report.pdf.CutSheet;
import wainscribe.report.pdf.PieceLabels;
import wainscribe.report.view.BarView;
import wainscribe.report.view.CutView;
import wainscribe.report.view.CuttingView;
import wainscribe.report.view.CuttingViews;
import wainscribe.report.view.PackViews;

/** The cutting plan in the pack, the cut sheet and the labels. */
class CuttingSheetsTest {

	private static final DesignServices SERVICES = DesignServices.builtIn();
	private static PackContent content;
	private static CuttingView plan;

	@BeforeAll
	static void planOnce() {
		SampleHome sample = new SampleHome("Old school", LengthUnit.MILLIMETRE).room("Hall").room("Nook");
		Brief brief = WainscribeFactory.eINSTANCE.createBrief();
		brief.setId("home-brief");
		brief.getStock().addAll(List.of(Length.ofMillimetres(2400), Length.ofMillimetres(4200)));
		sample.home().setBrief(brief);
		content = sample.content(SERVICES);
		plan = new CuttingViews(UnaryOperator.identity()).of(sample.home(), content.cutting());
	}

	private static String text(byte[] pdf) throws IOException {
		try (PDDocument document = Loader.loadPDF(pdf)) {
			return new PDFTextStripper().getText(document);
		}
	}

	private static int count(String text, String part) {
		return text.split(java.util.regex.Pattern.quote(part), -1).length - 1;
	}

	@Test
	void everyPieceOfEveryRoomStandsOnABarOnce() {
		List<String> labels = plan.bars().stream().flatMap(bar -> bar.pieces().stream())
				.map(piece -> piece.room() + ' ' + piece.label()).filter(label -> !label.contains(" part ")).sorted().toList();
		List<String> wanted = content.rooms().stream().flatMap(room -> room.cutList().pieces().stream().map(piece -> room.name() + ' ' + piece.label()))
				.filter(label -> labels.contains(label)).sorted().toList();
		assertFalse(labels.isEmpty());
		assertEquals(wanted, labels);
		assertEquals(labels.size(), Stream.of(labels).flatMap(List::stream).distinct().count());
	}

	@Test
	void barsAreDrawnToScale() {
		for (BarView bar : plan.bars()) {
			double pieces = bar.pieces().stream().mapToDouble(CutView::share).sum();
			assertTrue(bar.share() <= 1 && pieces + (bar.pieces().size() - 1) * bar.kerf() <= bar.share() + 1e-9, bar.toString());
			assertTrue(bar.pieces().stream().mapToDouble(piece -> Double.parseDouble(piece.percent())).sum() <= 100.01, bar.toString());
		}
	}

	@Test
	void theCutSheetHasEveryBarAndPieceWithItsSawSettings() throws IOException {
		ByteArrayOutputStream out = new ByteArrayOutputStream();
		new CutSheet().write("Old school", "millimetres", plan, PaperSize.small(LengthUnit.MILLIMETRE), out);
		String text = text(out.toByteArray());
		for (BarView bar : plan.bars()) {
			assertTrue(text.contains("Bar " + bar.number() + " "), text);
		}
		int pieces = plan.bars().stream().mapToInt(bar -> bar.pieces().size()).sum();
		assertEquals(pieces, count(text, "Left or lower end:"));
		assertTrue(text.contains("mitre 45"), text);
		assertTrue(text.contains("Buy"), text);
	}

	@Test
	void everyPieceHasOneLabel() throws IOException {
		ByteArrayOutputStream out = new ByteArrayOutputStream();
		new PieceLabels().write("Old school", plan, PaperSize.small(LengthUnit.MILLIMETRE), out);
		String text = text(out.toByteArray());
		for (BarView bar : plan.bars()) {
			for (CutView piece : bar.pieces()) {
				assertTrue(text.contains(piece.label()), piece.label());
			}
		}
		int pieces = plan.bars().stream().mapToInt(bar -> bar.pieces().size()).sum();
		long rooms = text.lines().filter(line -> line.strip().matches("(Hall|Nook)( (Hall|Nook)){0,2}"))
				.mapToLong(line -> line.strip().split(" ").length).sum();
		assertEquals(pieces, rooms);
	}

	@Test
	void thePageShowsTheBarsAndSaysThatPricesAreMissing() throws IOException {
		StringWriter out = new StringWriter();
		new PackPage().write(new PackViews(SERVICES.profiles(), SERVICES.patterns(), SERVICES.elevation(), List.of()).of(content), out);
		String page = out.toString();
		assertEquals(plan.bars().size(), count(page, "<div class=\"bar\""));
		assertTrue(page.contains("No price for every length of"), "says what is not priced");
		assertTrue(page.contains("href=\"cut-sheet.pdf\"") && page.contains("href=\"piece-labels.pdf\""));
	}
}
