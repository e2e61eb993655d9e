// SPDX-License-Identifier: EPL-2.0
package wainscribe.profile.file;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;

import wainscribe.model.Material;
import wainscribe.model.ProfileUse;
import wainscribe.model.storage.HomeFileException;
import wainscribe.profile.FinishState;
import wainscribe.profile.SupplyLength;
import wainscribe.profile.TrimProfile;
import wainscribe.profile.section.ArcSegment;
import wainscribe.profile.section.CurveSegment;
import wainscribe.profile.section.ProfileSection;
import wainscribe.profile.section.SectionPoint;
import wainscribe.profile.section.Segment;
import wainscribe.profile.section.StraightSegment;

/** Reads a profile from XML, without document types and external entities. For one file, once. */
final class ProfileReader {

	private final Path path;
	private final List<Segment> face = new ArrayList<>();
	private final List<Segment> back = new ArrayList<>();
	private final List<SupplyLength> supply = new ArrayList<>();
	private XMLStreamReader xml;
	private ElementReader element;
	private SectionPoint pen;

	ProfileReader(Path path) {
		this.path = path;
	}

	TrimProfile read(InputStream in) throws IOException {
		XMLInputFactory factory = XMLInputFactory.newDefaultFactory();
		factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
		factory.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
		factory.setProperty(XMLInputFactory.IS_REPLACING_ENTITY_REFERENCES, false);
		try {
			xml = factory.createXMLStreamReader(in);
			element = new ElementReader(path, xml);
			xml.nextTag();
			return profile();
		} catch (XMLStreamException e) {
			int row = e.getLocation() == null ? 1 : e.getLocation().getLineNumber();
			int column = e.getLocation() == null ? 1 : e.getLocation().getColumnNumber();
			throw new HomeFileException(path, row, column, "no well-formed XML; expected a profile", e); //$NON-NLS-1$
		}
	}

	private TrimProfile profile() throws XMLStreamException, IOException {
		element.expect("profile", Set.of("format", "id", "name", "uses", "material", "finish")); //$NON-NLS-1$ //$NON-NLS-2$ //$NON-NLS-3$ //$NON-NLS-4$ //$NON-NLS-5$ //$NON-NLS-6$ //$NON-NLS-7$
		if (!"1".equals(element.text("format"))) { //$NON-NLS-1$ //$NON-NLS-2$
			throw element.fault("format " + element.text("format") + " of a newer suite; expected 1"); //$NON-NLS-1$ //$NON-NLS-2$ //$NON-NLS-3$
		}
		String id = element.text("id"); //$NON-NLS-1$
		String name = element.text("name"); //$NON-NLS-1$
		Set<ProfileUse> uses = uses(element.text("uses")); //$NON-NLS-1$
		Material material = material(element.text("material", "unrecorded")); //$NON-NLS-1$ //$NON-NLS-2$
		String word = element.text("finish", "unrecorded"); //$NON-NLS-1$ //$NON-NLS-2$
		FinishState finish = FinishState.of(word)
				.orElseThrow(() -> element.fault("finish " + word + "; expected bare, primed, prefinished or unrecorded")); //$NON-NLS-1$ //$NON-NLS-2$
		while (xml.nextTag() == XMLStreamConstants.START_ELEMENT) {
			part();
		}
		return new TrimProfile(id, name, uses, material, finish, new ProfileSection(face, back), supply);
	}

	private void part() throws XMLStreamException, IOException {
		switch (xml.getLocalName()) {
			case "face" -> { //$NON-NLS-1$
				element.expect("face", Set.of("x", "y")); //$NON-NLS-1$ //$NON-NLS-2$ //$NON-NLS-3$
				pen = element.point(""); //$NON-NLS-1$
				segments(face);
			}
			case "back" -> { //$NON-NLS-1$
				element.expect("back", Set.of()); //$NON-NLS-1$
				if (pen == null) {
					throw element.fault("back before face; expected the face first"); //$NON-NLS-1$
				}
				segments(back);
			}
			case "supply" -> { //$NON-NLS-1$
				element.expect("supply", Set.of("length", "price")); //$NON-NLS-1$ //$NON-NLS-2$ //$NON-NLS-3$
				supply.add(element.supply());
				element.end();
			}
			default -> throw element.fault("element " + xml.getLocalName() + "; expected face, back or supply"); //$NON-NLS-1$ //$NON-NLS-2$
		}
	}

	private void segments(List<Segment> into) throws XMLStreamException, IOException {
		while (xml.nextTag() == XMLStreamConstants.START_ELEMENT) {
			Segment segment = segment();
			into.add(segment);
			pen = segment.end();
			element.end();
		}
	}

	private Segment segment() throws IOException {
		switch (xml.getLocalName()) {
			case "line": //$NON-NLS-1$
				element.expect("line", Set.of("x", "y")); //$NON-NLS-1$ //$NON-NLS-2$ //$NON-NLS-3$
				return new StraightSegment(pen, element.point("")); //$NON-NLS-1$
			case "arc": //$NON-NLS-1$
				element.expect("arc", Set.of("x", "y", "rise")); //$NON-NLS-1$ //$NON-NLS-2$ //$NON-NLS-3$ //$NON-NLS-4$
				SectionPoint end = element.point(""); //$NON-NLS-1$
				if (end.equals(pen) || element.length("rise").signum() == 0) { //$NON-NLS-1$
					throw element.fault("an arc without a chord or a rise; expected another point and a rise that is not 0"); //$NON-NLS-1$
				}
				return new ArcSegment(pen, end, element.length("rise")); //$NON-NLS-1$
			case "curve": //$NON-NLS-1$
				element.expect("curve", Set.of("x1", "y1", "x2", "y2", "x", "y")); //$NON-NLS-1$ //$NON-NLS-2$ //$NON-NLS-3$ //$NON-NLS-4$ //$NON-NLS-5$ //$NON-NLS-6$ //$NON-NLS-7$
				return new CurveSegment(pen, element.point("1"), element.point("2"), element.point("")); //$NON-NLS-1$ //$NON-NLS-2$ //$NON-NLS-3$
			default:
				throw element.fault("element " + xml.getLocalName() + "; expected line, arc or curve"); //$NON-NLS-1$ //$NON-NLS-2$
		}
	}

	private Set<ProfileUse> uses(String words) throws IOException {
		Set<ProfileUse> uses = EnumSet.noneOf(ProfileUse.class);
		for (String word : words.strip().split("\\s+")) { //$NON-NLS-1$
			ProfileUse use = ProfileUse.get(word);
			if (use == null) {
				throw element.fault("use " + word + "; expected words of " //$NON-NLS-1$ //$NON-NLS-2$
						+ ProfileUse.VALUES.stream().map(ProfileUse::getLiteral).toList());
			}
			uses.add(use);
		}
		return uses;
	}

	private Material material(String word) throws IOException {
		Material material = Material.get(word);
		if (material == null) {
			throw element.fault("material " + word + "; expected one of " //$NON-NLS-1$ //$NON-NLS-2$
					+ Material.VALUES.stream().map(Material::getLiteral).toList());
		}
		return material;
	}
}
