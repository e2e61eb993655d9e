// SPDX-License-Identifier: EPL-2.0
package wainscribe.model.storage;

import java.io.StringReader;
import java.nio.file.Path;
import java.util.List;

import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;

/** Reads the format version of a file and lifts older files step by step. */
final class FormatVersion {

	/** The version written today. */
	static final int CURRENT = 1;

	private static final String ATTRIBUTE = "formatVersion"; //$NON-NLS-1$

	private final List<FormatMigration> migrations;

	FormatVersion(List<FormatMigration> migrations) {
		this.migrations = List.copyOf(migrations);
	}

	/** Returns the text as a file of today's version. */
	String lift(Path file, String xml) throws HomeFileException {
		String lifted = xml;
		for (int version = versionOf(file, lifted); version < CURRENT; version++) {
			lifted = migration(file, version).migrate(lifted);
		}
		return lifted;
	}

	private FormatMigration migration(Path file, int version) throws HomeFileException {
		return migrations.stream().filter(candidate -> candidate.fromVersion() == version).findFirst()
				.orElseThrow(() -> new HomeFileException(file, "format version " + version + " can't be read; expected " + CURRENT)); //$NON-NLS-1$ //$NON-NLS-2$
	}

	private static int versionOf(Path file, String xml) throws HomeFileException {
		String written = rootAttribute(file, xml);
		int version = CURRENT;
		try {
			version = written == null ? CURRENT : Integer.parseInt(written);
		} catch (NumberFormatException e) {
			throw new HomeFileException(file, "format version \"" + written + "\"; expected a whole number"); //$NON-NLS-1$ //$NON-NLS-2$
		}
		if (version > CURRENT) {
			throw new HomeFileException(file, "written by a newer Wainscribe (format version " + version //$NON-NLS-1$
					+ "); expected at most " + CURRENT); //$NON-NLS-1$
		}
		return version;
	}

	private static String rootAttribute(Path file, String xml) throws HomeFileException {
		XMLInputFactory factory = XMLInputFactory.newDefaultFactory();
		factory.setProperty(XMLInputFactory.SUPPORT_DTD, Boolean.FALSE);
		factory.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, Boolean.FALSE);
		try {
			XMLStreamReader reader = factory.createXMLStreamReader(new StringReader(xml));
			try {
				while (reader.hasNext()) {
					int event = reader.next();
					if (event == XMLStreamConstants.DTD) {
						throw new HomeFileException(file, reader.getLocation().getLineNumber(),
								reader.getLocation().getColumnNumber(), "a document type; expected none", //$NON-NLS-1$
								new XMLStreamException("document type")); //$NON-NLS-1$
					}
					if (event == XMLStreamConstants.START_ELEMENT) {
						return reader.getAttributeValue(null, ATTRIBUTE);
					}
				}
			} finally {
				reader.close();
			}
		} catch (XMLStreamException e) {
			int row = e.getLocation() == null ? 1 : e.getLocation().getLineNumber();
			int column = e.getLocation() == null ? 1 : e.getLocation().getColumnNumber();
			throw new HomeFileException(file, row, column, "can't be read from here on; expected a whole file written by Wainscribe", e); //$NON-NLS-1$
		}
		return null;
	}
}
