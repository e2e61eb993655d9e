// SPDX-License-Identifier: EPL-2.0
package wainscribe.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.StringReader;
import java.io.StringWriter;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

import javax.xml.parsers.DocumentBuilder;
import javax.xml.parsers.DocumentBuilderFactory;

import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;

import wainscribe.model.length.LengthUnit;
import wainscribe.report.html.PackPage;
import wainscribe.report.view.PackViews;

/** The page is written so that XML parsers read it as well; that is how it is checked. */
class PackPageTest {

	private static final String NAME = "Old school <script>alert('x')</script> & \"house\" {{ 7 * 6 }}";
	private static Document page;
	private static String text;

	@BeforeAll
	static void writeOnce() throws Exception {
		DesignServices services = DesignServices.builtIn();
		PackContent content = new SampleHome(NAME, LengthUnit.INCH).room("Reading \u017ei\u017eka <i>").room("CON")
				.content(services);
		StringWriter out = new StringWriter();
		new PackPage().write(new PackViews(services.profiles(), services.patterns(), services.elevation(),
				List.of("svg", "dxf")).of(content), out);
		text = out.toString();
		DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
		factory.setFeature("http://apache.org/xml/features/nonvalidating/load-external-dtd", false);
		factory.setFeature("http://xml.org/sax/features/external-general-entities", false);
		DocumentBuilder builder = factory.newDocumentBuilder();
		page = builder.parse(new InputSource(new StringReader(text)));
	}

	private static List<Element> elements(String name) {
		NodeList nodes = page.getElementsByTagName(name);
		List<Element> elements = new ArrayList<>();
		for (int i = 0; i < nodes.getLength(); i++) {
			elements.add((Element) nodes.item(i));
		}
		return elements;
	}

	@Test
	void namesAreShownAsText() {
		assertEquals(NAME, elements("h1").getFirst().getTextContent());
		assertTrue(elements("h2").stream().anyMatch(title -> title.getTextContent().equals("Reading \u017ei\u017eka <i>")));
		assertTrue(elements("strong").stream().anyMatch(name -> name.getTextContent().equals("Fern & <moss>")));
		for (String forbidden : List.of("script", "img", "i", "moss", "b", "iframe", "link", "object")) {
			assertTrue(elements(forbidden).isEmpty(), forbidden);
		}
	}

	@Test
	void needsNothingFromElsewhere() {
		String withoutNamespaces = text.replace("http://www.w3.org/2000/svg", "").replace("http://www.w3.org/1999/xhtml", "");
		assertFalse(withoutNamespaces.contains("://"), "no address of another place");
		assertFalse(text.contains("url("), "no picture by style");
		assertFalse(text.contains("@import"));
	}

	@Test
	void isReadByScreenReaders() {
		assertEquals("en", page.getDocumentElement().getAttribute("lang"));
		assertEquals(1, elements("h1").size());
		assertEquals(1, elements("main").size());
		Set<String> ids = new HashSet<>();
		for (Element element : elements("*")) {
			if (element.hasAttribute("id")) {
				assertTrue(ids.add(element.getAttribute("id")), () -> "twice: " + element.getAttribute("id"));
			}
		}
		assertEquals(2 * 4 * 2, elements("svg").size(), "each wall as it will be and with its measures");
		for (Element svg : elements("svg")) {
			assertEquals("img", svg.getAttribute("role"));
			for (String id : svg.getAttribute("aria-labelledby").split(" ")) {
				assertTrue(ids.contains(id), id);
			}
		}
		for (Element table : elements("table")) {
			assertEquals(1, table.getElementsByTagName("caption").getLength());
		}
		elements("a").stream().map(link -> link.getAttribute("href")).filter(link -> link.startsWith("#"))
				.forEach(link -> assertTrue(ids.contains(link.substring(1)), link));
	}

	@Test
	void saysWhatCanHurtSomeone() {
		List<String> titles = elements("h4").stream().map(Element::getTextContent).toList();
		assertTrue(titles.containsAll(List.of("Local codes and licensed trades decide", "Old paint may hold lead", "Asbestos",
				"What is inside the wall", "Heavy glass")), titles::toString);
	}

	@Test
	void setOutStandsInTheUnitOfTheHome() {
		List<String> captions = elements("caption").stream().map(Element::getTextContent).toList();
		assertTrue(captions.stream().anyMatch(caption -> caption.startsWith("Set-out of wall A")), captions::toString);
		assertTrue(elements("td").stream().anyMatch(cell -> cell.getTextContent().matches("\\d+' \\d+ \\d+/16\"")));
	}
}
