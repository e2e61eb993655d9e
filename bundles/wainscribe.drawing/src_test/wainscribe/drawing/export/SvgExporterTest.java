// SPDX-License-Identifier: EPL-2.0
package wainscribe.drawing.export;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.util.ArrayList;
import java.util.List;

import javax.xml.parsers.DocumentBuilderFactory;

import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

import wainscribe.drawing.svg.SvgExporter;

class SvgExporterTest {

	private static Document parse(byte[] bytes) throws Exception {
		DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
		factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
		return factory.newDocumentBuilder().parse(new ByteArrayInputStream(bytes));
	}

	private static List<Element> elements(Document document, String name) {
		NodeList nodes = document.getElementsByTagName(name);
		List<Element> elements = new ArrayList<>();
		for (int i = 0; i < nodes.getLength(); i++) {
			elements.add((Element) nodes.item(i));
		}
		return elements;
	}

	@Test
	void sizeIsThatOfTheWallInMillimetres() throws Exception {
		Element svg = parse(Exported.bytes(new SvgExporter(), "A")).getDocumentElement();
		String[] box = svg.getAttribute("viewBox").split(" ");
		assertEquals(box[2] + "mm", svg.getAttribute("width"));
		assertEquals(box[3] + "mm", svg.getAttribute("height"));
		assertTrue(Double.parseDouble(box[2]) > 3000, "a wall of 3 m and its dimensions");
	}

	@Test
	void layersAreNamedGroups() throws Exception {
		List<String> groups = elements(parse(Exported.bytes(new SvgExporter(), "A")), "g").stream()
				.map(group -> group.getAttribute("id")).toList();
		assertEquals(List.of("WALL", "HATCH", "BASE", "RAIL", "FRAME", "OPENING", "FIXTURE", "DIMENSION", "TEXT", "PIECE"), groups);
	}

	@Test
	void anyNameStaysText() throws Exception {
		String name = "<script>alert(1)</script> & \"Saal\" ]]> \u0000\ud800 \u017dofie \ud83d\udecb \u4e2d";
		Document document = parse(Exported.bytes(new SvgExporter(), name));
		assertTrue(elements(document, "script").isEmpty());
		assertTrue(elements(document, "text").stream().anyMatch(text -> text.getTextContent()
				.contains("<script>alert(1)</script> & \"Saal\" ]]> \ufffd\ufffd \u017dofie \ud83d\udecb \u4e2d")));
	}

	@Test
	void equalDrawingsGiveEqualBytes() throws Exception {
		assertArrayEquals(Exported.bytes(new SvgExporter(), "A"), Exported.bytes(new SvgExporter(), "A"));
	}
}
