// SPDX-License-Identifier: EPL-2.0
package wainscribe.finishes.colour.list;

import java.io.InputStream;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;

import wainscribe.finishes.colour.ColourSyntax;
import wainscribe.finishes.colour.Srgb;
import wainscribe.finishes.colour.SurfaceColour;

/**
 * Reads lists of colours as colour-exchange XML, version 3 (ISO 17972-1:2015; element names from memory of its public schema): objects with a
 * reflectance spectrum, CIELAB or sRGB values. CIELAB is taken as D65, 2 degrees, as this reader does not follow the specification an object
 * refers to. Document types and external entities are off.
 */
public final class ColourExchangeReader {

	private static final int DEFAULT_STEP = 10;
	private static final int WHITE = 255;

	/**
	 * Reads a list.
	 *
	 * @param stream the content; not closed
	 * @param file name of the file, for messages
	 * @throws ColourListException if it is no colour-exchange file
	 */
	public ColourList read(InputStream stream, String file) throws ColourListException {
		XMLInputFactory factory = XMLInputFactory.newFactory();
		factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
		factory.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
		try {
			XMLStreamReader xml = factory.createXMLStreamReader(stream);
			return read(xml, file);
		} catch (XMLStreamException e) {
			int row = e.getLocation() == null ? 0 : e.getLocation().getLineNumber();
			throw new ColourListException(file, Math.max(0, row), "", "expected well-formed XML without a document type"); //$NON-NLS-1$ //$NON-NLS-2$
		}
	}

	private static ColourList read(XMLStreamReader xml, String file) throws XMLStreamException, ColourListException {
		List<NamedColour> colours = new ArrayList<>();
		List<String> refused = new ArrayList<>();
		int step = DEFAULT_STEP;
		boolean root = false;
		while (xml.hasNext()) {
			if (xml.next() != XMLStreamConstants.START_ELEMENT) {
				continue;
			}
			if (!root && !"CxF".equals(xml.getLocalName())) { //$NON-NLS-1$
				throw new ColourListException(file, xml.getLocation().getLineNumber(), "", //$NON-NLS-1$
						'<' + xml.getLocalName() + ">: expected the element CxF of ISO 17972"); //$NON-NLS-1$
			}
			root = true;
			if ("WavelengthRange".equals(xml.getLocalName())) { //$NON-NLS-1$
				step = whole(xml.getAttributeValue(null, "Increment"), DEFAULT_STEP); //$NON-NLS-1$
			} else if ("Object".equals(xml.getLocalName())) { //$NON-NLS-1$
				int row = xml.getLocation().getLineNumber();
				String name = text(xml.getAttributeValue(null, "Name")); //$NON-NLS-1$
				String id = text(xml.getAttributeValue(null, "Id")); //$NON-NLS-1$
				colour(xml, step).ifPresentOrElse(colour -> colours.add(new NamedColour(name, id, colour)),
						() -> refused.add(new ColourListException(file, row, "", '"' + name //$NON-NLS-1$
								+ "\": expected a reflectance spectrum from 400 to 700 nm, CIELAB or sRGB values").getMessage())); //$NON-NLS-1$
			}
		}
		return new ColourList(file, colours, refused);
	}

	/** Reads on to the end of an object; the spectrum counts before the other values. */
	private static Optional<SurfaceColour> colour(XMLStreamReader xml, int step) throws XMLStreamException {
		Optional<SurfaceColour> spectrum = Optional.empty();
		Optional<SurfaceColour> other = Optional.empty();
		while (xml.hasNext()) {
			int event = xml.next();
			if (event == XMLStreamConstants.END_ELEMENT && "Object".equals(xml.getLocalName())) { //$NON-NLS-1$
				break;
			}
			if (event == XMLStreamConstants.START_ELEMENT) {
				switch (xml.getLocalName()) {
				case "ReflectanceSpectrum" -> spectrum = spectrum(xml, step); //$NON-NLS-1$
				case "ColorCIELab" -> other = ColourSyntax.parse("lab:" + String.join(",", children(xml, "L", "A", "B"))); //$NON-NLS-1$ //$NON-NLS-2$ //$NON-NLS-3$ //$NON-NLS-4$ //$NON-NLS-5$ //$NON-NLS-6$
				case "ColorSRGB" -> other = other.isPresent() ? other : srgb(children(xml, "R", "G", "B")); //$NON-NLS-1$ //$NON-NLS-2$ //$NON-NLS-3$ //$NON-NLS-4$
				default -> {
					// other descriptions of the object say nothing of its colour
				}
				}
			}
		}
		return spectrum.isPresent() ? spectrum : other;
	}

	/** Returns the texts of child elements in the order of their names, empty where one is missing. */
	private static List<String> children(XMLStreamReader xml, String... names) throws XMLStreamException {
		String parent = xml.getLocalName();
		Map<String, String> texts = new HashMap<>();
		while (xml.hasNext()) {
			int event = xml.next();
			if (event == XMLStreamConstants.END_ELEMENT && parent.equals(xml.getLocalName())) {
				break;
			}
			if (event == XMLStreamConstants.START_ELEMENT) {
				String name = xml.getLocalName();
				texts.put(name, xml.getElementText().trim());
			}
		}
		return Arrays.stream(names).map(name -> texts.getOrDefault(name, "")).toList(); //$NON-NLS-1$
	}

	private static Optional<SurfaceColour> srgb(List<String> channels) {
		int[] values = channels.stream().mapToInt(text -> whole(text, -1)).toArray();
		boolean real = Arrays.stream(values).allMatch(value -> value >= 0 && value <= WHITE);
		return real ? Optional.of(new SurfaceColour.Screen(new Srgb(values[0], values[1], values[2]))) : Optional.empty();
	}

	private static Optional<SurfaceColour> spectrum(XMLStreamReader xml, int step) throws XMLStreamException {
		int wavelength = whole(xml.getAttributeValue(null, "StartWL"), -1); //$NON-NLS-1$
		TreeMap<Integer, Double> readings = new TreeMap<>();
		try {
			for (String text : xml.getElementText().trim().split("\\s+")) { //$NON-NLS-1$
				double value = Double.parseDouble(text);
				if (!(value >= 0 && value <= ColourColumns.MOST)) {
					return Optional.empty();
				}
				readings.put(wavelength, value);
				wavelength += step;
			}
		} catch (NumberFormatException e) {
			return Optional.empty();
		}
		return SpectrumSamples.fault(readings).isEmpty() ? Optional.of(new SurfaceColour.Measured(SpectrumSamples.spectrum(readings)))
				: Optional.empty();
	}

	private static int whole(String text, int otherwise) {
		return text != null && text.trim().matches("\\d{1,4}") ? Integer.parseInt(text.trim()) : otherwise; //$NON-NLS-1$
	}

	private static String text(String value) {
		return value == null ? "" : value.trim(); //$NON-NLS-1$
	}
}
