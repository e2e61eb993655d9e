// SPDX-License-Identifier: EPL-2.0
package wainscribe.takeoff;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;

import javax.xml.parsers.DocumentBuilderFactory;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

import wainscribe.model.PriceUnit;
import wainscribe.model.Surface;

/** Opens the written file as what it is: a ZIP of XML parts (ECMA-376). */
class TakeoffWorkbookTest {

	@TempDir
	Path folder;

	private Map<String, Document> parts(HomeTakeoff takeoff) throws Exception {
		Path file = folder.resolve("takeoff.xlsx");
		try (OutputStream out = Files.newOutputStream(file)) {
			new TakeoffWorkbook().write(takeoff, out);
		}
		Map<String, Document> parts = new LinkedHashMap<>();
		try (ZipFile zip = new ZipFile(file.toFile())) {
			for (ZipEntry entry : Collections.list(zip.entries())) {
				parts.put(entry.getName(), parse(zip.getInputStream(entry).readAllBytes()));
			}
		}
		return parts;
	}

	private static Document parse(byte[] xml) throws Exception {
		DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
		factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
		return factory.newDocumentBuilder().parse(new ByteArrayInputStream(xml));
	}

	private static List<Element> elements(Document part, String name) {
		NodeList nodes = part.getElementsByTagName(name);
		List<Element> elements = new ArrayList<>();
		for (int i = 0; i < nodes.getLength(); i++) {
			elements.add((Element) nodes.item(i));
		}
		return elements;
	}

	private static HomeTakeoff takeoff() {
		SampleRoom sample = new SampleRoom(2400);
		sample.home.setName("=HYPERLINK(\"x\")");
		sample.room.setName("=2+3");
		sample.wall("A", 3000, "90", SampleRoom.frame("A1", 80, 220, 500, 500, 0));
		sample.paint("@sum(1)", Surface.WALLS);
		sample.price("@sum(1)", PriceUnit.LITRE, "2.5", null, "38.10");
		return sample.takeoff();
	}

	@Test
	void thereIsASummaryABuyingListAndASheetForEachRoom() throws Exception {
		Document workbook = parts(takeoff()).get("xl/workbook.xml");
		assertEquals(List.of("Summary", "Buying list", "=2+3"),
				elements(workbook, "sheet").stream().map(sheet -> sheet.getAttribute("name")).toList());
	}

	@Test
	void nothingIsAFormulaAndTextStaysText() throws Exception {
		Map<String, Document> parts = parts(takeoff());
		parts.forEach((name, part) -> assertTrue(elements(part, "f").isEmpty(), name));
		List<String> strings = elements(parts.get("xl/sharedStrings.xml"), "t").stream().map(Element::getTextContent).toList();
		assertTrue(strings.contains("=2+3"));
		assertTrue(strings.contains("@sum(1)"));
		assertTrue(strings.contains("=HYPERLINK(\"x\")"));
	}

	@Test
	void quantitiesAndMoneyAreNumbersInAFrozenSheet() throws Exception {
		Document list = parts(takeoff()).get("xl/worksheets/sheet2.xml");
		Element pane = elements(list, "pane").getFirst();
		assertEquals("frozen", pane.getAttribute("state"));
		assertEquals("1", pane.getAttribute("ySplit"));
		assertFalse(elements(list, "col").isEmpty());
		List<Element> numbers = elements(list, "c").stream().filter(cell -> !cell.getAttribute("t").equals("s")).toList();
		List<String> values = numbers.stream().map(Element::getTextContent).toList();
		assertTrue(values.contains("38.10"), values.toString());
	}

	@Test
	void theStreamStaysOpen() throws Exception {
		AtomicBoolean closed = new AtomicBoolean();
		ByteArrayOutputStream out = new ByteArrayOutputStream() {
			@Override
			public void close() {
				closed.set(true);
			}
		};
		new TakeoffWorkbook().write(takeoff(), out);
		assertFalse(closed.get());
		assertTrue(out.size() > 0);
	}

	@Test
	void namesOfSheetsAreShortLegalAndUnique() {
		SheetNames names = new SheetNames();
		assertEquals("Hall stairs", names.of("Hall/stairs"));
		assertEquals("HALL STAIRS (2)", names.of("HALL*STAIRS"));
		assertEquals("-", names.of("[]"));
		assertEquals("- (2)", names.of("''"));
		assertEquals(31, names.of("The long reading room of the village school").length());
		assertEquals("\uD83D\uDE00".repeat(15), names.of("\uD83D\uDE00".repeat(20)));
	}
}
