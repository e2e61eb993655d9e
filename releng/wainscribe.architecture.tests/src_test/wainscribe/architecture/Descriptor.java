// SPDX-License-Identifier: EPL-2.0
package wainscribe.architecture;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

import javax.xml.XMLConstants;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;

import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NamedNodeMap;
import org.w3c.dom.NodeList;
import org.xml.sax.SAXException;

/**
 * An XML file of a bundle, taken apart.
 *
 * @param file     where it lies
 * @param elements every element in it, in order
 */
record Descriptor(Path file, List<Element> elements) {

	static Descriptor read(Path file) {
		try {
			DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
			factory.setFeature(XMLConstants.FEATURE_SECURE_PROCESSING, true);
			factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
			Document document = factory.newDocumentBuilder().parse(Files.newInputStream(file));
			NodeList nodes = document.getElementsByTagName("*");
			List<Element> elements = new ArrayList<>();
			for (int i = 0; i < nodes.getLength(); i++) {
				elements.add((Element) nodes.item(i));
			}
			return new Descriptor(file, List.copyOf(elements));
		} catch (IOException | SAXException | ParserConfigurationException e) {
			throw new IllegalStateException(file + ": " + e.getMessage(), e);
		}
	}

	/** Every attribute of every element. */
	List<Attribute> attributes() {
		List<Attribute> found = new ArrayList<>();
		for (Element element : elements) {
			NamedNodeMap attributes = element.getAttributes();
			for (int i = 0; i < attributes.getLength(); i++) {
				found.add(new Attribute(element, attributes.item(i).getNodeName(), attributes.item(i).getNodeValue()));
			}
		}
		return found;
	}

	/**
	 * One attribute.
	 *
	 * @param element that has it
	 * @param name    of the attribute
	 * @param value   as written
	 */
	record Attribute(Element element, String name, String value) {
		@Override
		public String toString() {
			return element.getNodeName() + '/' + name + "=\"" + value + '"';
		}
	}
}
