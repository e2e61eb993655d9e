// SPDX-License-Identifier: EPL-2.0
package wainscribe.profile.file;

import java.util.List;
import java.util.stream.Collectors;

import wainscribe.model.ProfileUse;
import wainscribe.model.length.Length;
import wainscribe.model.length.LengthFormat;
import wainscribe.profile.SupplyLength;
import wainscribe.profile.TrimProfile;
import wainscribe.profile.section.ArcSegment;
import wainscribe.profile.section.CurveSegment;
import wainscribe.profile.section.SectionPoint;
import wainscribe.profile.section.Segment;
import wainscribe.profile.section.StraightSegment;

/** Writes a profile as XML; the same profile always gives the same text. */
record ProfileWriter(TrimProfile profile) {

	String text() {
		StringBuilder text = new StringBuilder("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n"); //$NON-NLS-1$
		String uses = profile.uses().stream().sorted().map(ProfileUse::getLiteral).collect(Collectors.joining(" ")); //$NON-NLS-1$
		text.append("<profile format=\"1\"" + attribute("id", profile.id()) + attribute("name", profile.name()) //$NON-NLS-1$ //$NON-NLS-2$ //$NON-NLS-3$
				+ attribute("uses", uses) + attribute("material", profile.material().getLiteral()) //$NON-NLS-1$ //$NON-NLS-2$
				+ attribute("finish", profile.finish().literal()) + ">\n"); //$NON-NLS-1$ //$NON-NLS-2$
		List<Segment> face = profile.section().face();
		text.append("  <face" + (face.isEmpty() ? "" : point("", face.getFirst().start())) + ">\n"); //$NON-NLS-1$ //$NON-NLS-2$ //$NON-NLS-3$ //$NON-NLS-4$
		append(text, face);
		text.append("  </face>\n  <back>\n"); //$NON-NLS-1$
		append(text, profile.section().back());
		text.append("  </back>\n"); //$NON-NLS-1$
		for (SupplyLength supply : profile.supply()) {
			String price = supply.knownPrice().map(known -> attribute("price", known.toPlainString())).orElse(""); //$NON-NLS-1$ //$NON-NLS-2$
			text.append("  <supply" + length("length", supply.length()) + price + "/>\n"); //$NON-NLS-1$ //$NON-NLS-2$ //$NON-NLS-3$
		}
		return text.append("</profile>\n").toString(); //$NON-NLS-1$
	}

	private static void append(StringBuilder text, List<Segment> segments) {
		for (Segment segment : segments) {
			text.append("    <" + switch (segment) { //$NON-NLS-1$
				case StraightSegment line -> "line"; //$NON-NLS-1$
				case ArcSegment arc -> "arc" + length("rise", arc.rise()); //$NON-NLS-1$ //$NON-NLS-2$
				case CurveSegment curve -> "curve" + point("1", curve.first()) + point("2", curve.second()); //$NON-NLS-1$ //$NON-NLS-2$ //$NON-NLS-3$
			} + point("", segment.end()) + "/>\n"); //$NON-NLS-1$ //$NON-NLS-2$
		}
	}

	private static String point(String number, SectionPoint point) {
		return length("x" + number, point.x()) + length("y" + number, point.y()); //$NON-NLS-1$ //$NON-NLS-2$
	}

	private static String length(String name, Length length) {
		return attribute(name, LengthFormat.asStored(length));
	}

	private static String attribute(String name, String value) {
		StringBuilder escaped = new StringBuilder();
		value.codePoints().forEach(character -> escaped.append(switch (character) {
			case '&' -> "&amp;"; //$NON-NLS-1$
			case '<' -> "&lt;"; //$NON-NLS-1$
			case '"' -> "&quot;"; //$NON-NLS-1$
			case '\n' -> "&#10;"; //$NON-NLS-1$
			case '\r' -> "&#13;"; //$NON-NLS-1$
			case '\t' -> "&#9;"; //$NON-NLS-1$
			default -> Character.toString(character);
		}));
		return " " + name + "=\"" + escaped + '"'; //$NON-NLS-1$ //$NON-NLS-2$
	}
}
