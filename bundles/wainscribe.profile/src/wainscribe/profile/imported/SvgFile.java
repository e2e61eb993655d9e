// SPDX-License-Identifier: EPL-2.0
package wainscribe.profile.imported;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;

import wainscribe.profile.section.Segment;

/** Finds the one path of an SVG file. Document types and external entities are not read. */
record SvgFile(Path file, double millimetresPerUnit) {

	List<Segment> outline() throws IOException {
		XMLInputFactory factory = XMLInputFactory.newDefaultFactory();
		factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
		factory.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
		try (var in = Files.newInputStream(file)) {
			return onlyPath(factory.createXMLStreamReader(in));
		} catch (XMLStreamException e) {
			int row = e.getLocation() == null ? 1 : e.getLocation().getLineNumber();
			throw new SectionImportException(file, row, "no well-formed XML; expected an SVG file", e); //$NON-NLS-1$
		}
	}

	private List<Segment> onlyPath(XMLStreamReader xml) throws XMLStreamException, SectionImportException {
		List<Segment> found = null;
		int unseen = 0;
		while (xml.hasNext()) {
			int event = xml.next();
			if (event == XMLStreamConstants.END_ELEMENT && isUnseen(xml.getLocalName())) {
				unseen--;
			}
			if (event != XMLStreamConstants.START_ELEMENT) {
				continue;
			}
			unseen += isUnseen(xml.getLocalName()) ? 1 : 0;
			if (unseen == 0 && xml.getAttributeValue(null, "transform") != null) { //$NON-NLS-1$
				throw fault(xml, "a transform; expected a drawing without one, so that its unit is sure"); //$NON-NLS-1$
			}
			if (unseen == 0 && "path".equals(xml.getLocalName())) { //$NON-NLS-1$
				if (found != null) {
					throw fault(xml, "a second path; expected one closed outline"); //$NON-NLS-1$
				}
				found = path(xml);
			}
		}
		if (found == null) {
			throw new SectionImportException(file, "no path; expected one closed outline"); //$NON-NLS-1$
		}
		return found;
	}

	/** What such elements hold is not drawn where it stands. */
	private static boolean isUnseen(String element) {
		return List.of("defs", "clipPath", "marker", "symbol", "mask", "pattern").contains(element); //$NON-NLS-1$ //$NON-NLS-2$ //$NON-NLS-3$ //$NON-NLS-4$ //$NON-NLS-5$ //$NON-NLS-6$
	}

	private List<Segment> path(XMLStreamReader xml) throws SectionImportException {
		String data = xml.getAttributeValue(null, "d"); //$NON-NLS-1$
		try {
			return new SvgPath(data == null ? "" : data, millimetresPerUnit).outline(); //$NON-NLS-1$
		} catch (SvgPathException e) {
			throw new SectionImportException(file, xml.getLocation().getLineNumber(), e.getMessage(), e);
		}
	}

	private SectionImportException fault(XMLStreamReader xml, String expected) {
		return new SectionImportException(file, xml.getLocation().getLineNumber(), expected);
	}
}
