// SPDX-License-Identifier: EPL-2.0
package wainscribe.rules;

import java.io.IOException;
import java.io.InputStream;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Properties;

import javax.xml.XMLConstants;
import javax.xml.parsers.DocumentBuilder;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;

import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.SAXException;
import org.xml.sax.helpers.DefaultHandler;

/** Reads the rule contributions of one bundle from its files. */
final class PluginFile {

	private PluginFile() {
	}

	static List<RuleElement> rules(Path bundle, ClassLoader loader) throws IOException {
		Properties texts = new Properties();
		try (Reader reader = Files.newBufferedReader(bundle.resolve("OSGI-INF/l10n/bundle.properties"), //$NON-NLS-1$
				StandardCharsets.UTF_8)) {
			texts.load(reader);
		}
		// the root of a packed bundle has no name
		Path folder = bundle.toAbsolutePath().normalize().getFileName();
		String contributor = folder == null ? PluginFile.class.getPackageName() : folder.toString();
		List<RuleElement> found = new ArrayList<>();
		NodeList extensions = parse(bundle.resolve("plugin.xml")).getElementsByTagName("extension"); //$NON-NLS-1$ //$NON-NLS-2$
		for (int i = 0; i < extensions.getLength(); i++) {
			Element extension = (Element) extensions.item(i);
			if (RuleCatalogue.EXTENSION_POINT.equals(extension.getAttribute("point"))) { //$NON-NLS-1$
				found.addAll(new FileElement(extension, texts, contributor, loader).children(RuleCatalogue.RULE));
			}
		}
		return found;
	}

	private static Document parse(Path file) throws IOException {
		try (InputStream in = Files.newInputStream(file)) {
			DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
			factory.setFeature(XMLConstants.FEATURE_SECURE_PROCESSING, true);
			factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true); //$NON-NLS-1$
			DocumentBuilder builder = factory.newDocumentBuilder();
			builder.setErrorHandler(new DefaultHandler());
			return builder.parse(in);
		} catch (ParserConfigurationException | SAXException failure) {
			throw new IOException(file + ": " + failure.getMessage(), failure); //$NON-NLS-1$
		}
	}

	private record FileElement(Element element, Properties texts, String contributor, ClassLoader loader)
			implements RuleElement {

		@Override
		public String attribute(String name) {
			if (!element.hasAttribute(name)) {
				return null;
			}
			String raw = element.getAttribute(name);
			return raw.startsWith("%") ? texts.getProperty(raw.substring(1), raw) : raw; //$NON-NLS-1$
		}

		@Override
		public List<RuleElement> children(String name) {
			List<RuleElement> found = new ArrayList<>();
			for (var node = element.getFirstChild(); node != null; node = node.getNextSibling()) {
				if (node instanceof Element child && child.getTagName().equals(name)) {
					found.add(new FileElement(child, texts, contributor, loader));
				}
			}
			return found;
		}

		@Override
		public RuleCheck create() {
			String name = attribute("class"); //$NON-NLS-1$
			try {
				return (RuleCheck) Class.forName(name, true, loader).getConstructor().newInstance();
			} catch (ReflectiveOperationException | ClassCastException failure) {
				throw new IllegalStateException(contributor + ": class " + name + " cannot be used as a check", failure); //$NON-NLS-1$ //$NON-NLS-2$
			}
		}
	}
}
