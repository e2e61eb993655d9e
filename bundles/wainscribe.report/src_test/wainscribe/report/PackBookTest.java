// SPDX-License-Identifier: EPL-2.0
package wainscribe.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.util.ArrayList;
import java.util.List;

import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineItem;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

import wainscribe.model.length.LengthUnit;
import wainscribe.report.pdf.PackBook;
import wainscribe.report.view.PackViews;

class PackBookTest {

	private static byte[] book;

	@BeforeAll
	static void printOnce() throws Exception {
		DesignServices services = DesignServices.builtIn();
		PackContent content = new SampleHome("Old school \u4e2d\ud83d\ude00", LengthUnit.MILLIMETRE).room("Saal")
				.room("Hall").content(services);
		ByteArrayOutputStream out = new ByteArrayOutputStream();
		new PackBook(services.elevation()).write(content,
				new PackViews(services.profiles(), services.patterns(), services.elevation(), List.of()).of(content), out);
		book = out.toByteArray();
	}

	private static List<String> titles(Iterable<PDOutlineItem> items) {
		List<String> titles = new ArrayList<>();
		items.forEach(item -> titles.add(item.getTitle()));
		return titles;
	}

	@Test
	void chaptersCanBeFound() throws Exception {
		try (PDDocument document = Loader.loadPDF(book)) {
			List<PDOutlineItem> chapters = new ArrayList<>();
			document.getDocumentCatalog().getDocumentOutline().children().forEach(chapters::add);
			assertEquals(List.of("At a glance", "Saal", "Hall", "Cutting plan", "Quantities and prices"), titles(chapters));
			assertEquals(List.of("Wall A", "Wall a", "Wall ../B", "Wall CON", "Schedules"), titles(chapters.get(1).children()));
			assertTrue(document.getPages().indexOf(chapters.get(2).findDestinationPage(document)) > document.getPages()
					.indexOf(chapters.get(1).findDestinationPage(document)));
		}
	}

	@Test
	void everyPageHasItsNumber() throws Exception {
		try (PDDocument document = Loader.loadPDF(book)) {
			PDFTextStripper stripper = new PDFTextStripper();
			int count = document.getNumberOfPages();
			for (int page = 1; page <= count; page++) {
				stripper.setStartPage(page);
				stripper.setEndPage(page);
				assertTrue(stripper.getText(document).contains(page + " / " + count));
			}
		}
	}

	@Test
	void everyElevationStatesItsScale() throws Exception {
		try (PDDocument document = Loader.loadPDF(book)) {
			String text = new PDFTextStripper().getText(document);
			assertEquals(2 * 4, text.split("Scale 1:(20|25) on A[34]", -1).length - 1);
			assertTrue(text.contains("Before anyone starts"));
			assertTrue(text.contains("Saal: set-out"));
			assertTrue(text.contains("Saal: pieces to cut"));
			assertTrue(text.contains("EUR"), "prices in the currency of the home");
		}
	}
}
