// SPDX-License-Identifier: EPL-2.0
package wainscribe.profile.file;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.Set;
import java.util.TreeSet;

import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;

import wainscribe.model.length.Length;
import wainscribe.model.length.LengthParser;
import wainscribe.model.length.LengthSyntaxException;
import wainscribe.model.length.LengthUnit;
import wainscribe.model.storage.HomeFileException;
import wainscribe.profile.SupplyLength;
import wainscribe.profile.section.SectionPoint;

/** Reads the attributes of the element where the reader stands and names row and column of what is wrong. */
record ElementReader(Path path, XMLStreamReader xml) {

	private static final Length FARTHEST = Length.ofMillimetres(100_000);

	/** Refuses another element and attributes that it does not know. */
	void expect(String name, Set<String> attributes) throws HomeFileException {
		if (!name.equals(xml.getLocalName())) {
			throw fault("element " + xml.getLocalName() + "; expected " + name); //$NON-NLS-1$ //$NON-NLS-2$
		}
		for (int i = 0; i < xml.getAttributeCount(); i++) {
			if (!attributes.contains(xml.getAttributeLocalName(i))) {
				throw fault("attribute " + xml.getAttributeLocalName(i) + " of " + name + "; expected " + new TreeSet<>(attributes)); //$NON-NLS-1$ //$NON-NLS-2$ //$NON-NLS-3$
			}
		}
	}

	/** Passes the end of an element that holds nothing. */
	void end() throws XMLStreamException, HomeFileException {
		String name = xml.getLocalName();
		if (xml.nextTag() != XMLStreamConstants.END_ELEMENT) {
			throw fault("element " + xml.getLocalName() + " in " + name + "; expected nothing"); //$NON-NLS-1$ //$NON-NLS-2$ //$NON-NLS-3$
		}
	}

	String text(String name) throws HomeFileException {
		String text = text(name, ""); //$NON-NLS-1$
		if (text.isBlank()) {
			throw fault(xml.getLocalName() + " without " + name); //$NON-NLS-1$
		}
		return text;
	}

	String text(String name, String otherwise) {
		String text = xml.getAttributeValue(null, name);
		return text == null ? otherwise : text;
	}

	SectionPoint point(String number) throws HomeFileException {
		return new SectionPoint(length("x" + number), length("y" + number)); //$NON-NLS-1$ //$NON-NLS-2$
	}

	Length length(String name) throws HomeFileException {
		String text = text(name);
		try {
			Length length = new LengthParser(LengthUnit.MILLIMETRE).parse(text);
			if (!length.abs().isMoreThan(FARTHEST)) {
				return length;
			}
		} catch (LengthSyntaxException | ArithmeticException e) {
			throw new HomeFileException(path, row(), column(), lengthFault(name, text), e);
		}
		throw fault(lengthFault(name, text));
	}

	private static String lengthFault(String name, String text) {
		return name + " is \"" + text + "\"; expected a length such as 12.5 mm or 1/2\""; //$NON-NLS-1$ //$NON-NLS-2$
	}

	SupplyLength supply() throws HomeFileException {
		Length length = length("length"); //$NON-NLS-1$
		String price = text("price", ""); //$NON-NLS-1$ //$NON-NLS-2$
		if (length.signum() <= 0 || !price.matches("(\\d{1,9}(\\.\\d{1,4})?)?")) { //$NON-NLS-1$
			throw fault("supply of " + text("length") + " for \"" + price + "\"; expected a length above 0 and a price such as 4.20 or none"); //$NON-NLS-1$ //$NON-NLS-2$ //$NON-NLS-3$ //$NON-NLS-4$
		}
		return new SupplyLength(length, price.isEmpty() ? null : new BigDecimal(price));
	}

	HomeFileException fault(String expected) {
		return new HomeFileException(path, row(), column(), expected, new IllegalArgumentException(expected));
	}

	private int row() {
		return xml.getLocation().getLineNumber();
	}

	private int column() {
		return xml.getLocation().getColumnNumber();
	}
}
