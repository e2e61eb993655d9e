// SPDX-License-Identifier: EPL-2.0
package wainscribe.architecture;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.w3c.dom.Element;
import org.w3c.dom.Node;

/** Everyone who wants to extend the suite finds each extension point explained, with an example. */
class ExtensionPointTest {

	private static final List<String> SECTIONS = List.of("since", "examples", "apiinfo");

	/** Every extension point's schema, there or not. */
	static List<Path> schemas() {
		List<Path> schemas = new ArrayList<>();
		for (Bundle bundle : Repository.bundles()) {
			for (Path file : bundle.descriptors()) {
				Descriptor.read(file).elements().stream().filter(element -> element.getNodeName().equals("extension-point"))
					.forEach(element -> schemas.add(bundle.folder().resolve(element.getAttribute("schema"))));
			}
		}
		return schemas;
	}

	@Test
	void builtInPartsUseExtensionPoints() {
		assertFalse(schemas().isEmpty(), "no bundle declares an extension point");
	}

	@ParameterizedTest
	@MethodSource("schemas")
	void extensionPointIsExplained(Path schema) {
		String place = Repository.ROOT.relativize(schema).toString();
		assertTrue(Files.isRegularFile(schema) && place.endsWith(".exsd"), place + " is not there");
		assertFalse(Repository.text(schema).contains("[Enter"), place + " still has filler");
		List<Element> elements = Descriptor.read(schema).elements();
		assertAll(place,
			() -> assertTrue(words(descriptionOf(elements)) >= 10, "description of the extension point"),
			() -> SECTIONS.forEach(type -> assertTrue(words(section(elements, type)) >= (type.equals("since") ? 1 : 5),
				"section " + type)));
	}

	@ParameterizedTest
	@MethodSource("schemas")
	void attributeIsExplained(Path schema) {
		List<String> silent = Descriptor.read(schema).elements().stream()
			.filter(element -> local(element).equals("attribute") && element.hasAttribute("name"))
			.filter(element -> words(text(element, "documentation")) < 2)
			.map(element -> owner(element) + '/' + element.getAttribute("name"))
			// the three that every extension has mean the same everywhere
			.filter(name -> !List.of("extension/point", "extension/id", "extension/name").contains(name)).toList();
		assertEquals(List.of(), silent, "attributes without a word in " + Repository.ROOT.relativize(schema));
	}

	private static String descriptionOf(List<Element> elements) {
		return elements.stream().filter(element -> local(element).equals("annotation") && element.getParentNode() == elements.get(0))
			.filter(annotation -> annotation.getElementsByTagName("meta.section").getLength() == 0)
			.map(annotation -> text(annotation, "documentation")).reduce("", String::concat);
	}

	private static String section(List<Element> elements, String type) {
		return elements.stream().filter(element -> local(element).equals("annotation"))
			.filter(annotation -> annotation.getElementsByTagName("meta.section").getLength() > 0
				&& ((Element) annotation.getElementsByTagName("meta.section").item(0)).getAttribute("type").equalsIgnoreCase(type))
			.map(annotation -> text(annotation, "documentation")).reduce("", String::concat);
	}

	private static String text(Element element, String child) {
		for (String prefix : new String[] { "", "xsd:", "xs:" }) {
			if (element.getElementsByTagName(prefix + child).getLength() > 0) {
				return element.getElementsByTagName(prefix + child).item(0).getTextContent();
			}
		}
		return "";
	}

	private static String local(Element element) {
		return element.getNodeName().replaceFirst("^\\w+:", "");
	}

	private static String owner(Element attribute) {
		Node node = attribute.getParentNode();
		while (node instanceof Element element && !local(element).equals("element")) {
			node = node.getParentNode();
		}
		return node instanceof Element element ? element.getAttribute("name") : "?";
	}

	private static int words(String text) {
		return text.isBlank() ? 0 : text.strip().split("\\s+").length;
	}
}
