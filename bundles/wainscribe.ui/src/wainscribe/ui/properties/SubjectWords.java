// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.properties;

import static java.util.Objects.requireNonNull;

import java.util.Locale;

import org.eclipse.osgi.util.NLS;

import wainscribe.commands.ElementWords;
import wainscribe.layout.FrameOutline;
import wainscribe.layout.RailBand;
import wainscribe.layout.StripOutline;
import wainscribe.model.Element;
import wainscribe.model.Placed;
import wainscribe.model.ReferenceLine;
import wainscribe.model.Wall;

/** What the heading of a property sheet says. */
final class SubjectWords {

	private final FeatureWords words;

	SubjectWords(FeatureWords words) {
		this.words = requireNonNull(words);
	}

	/** Returns the name of the thing, or its kind if it has none. */
	String title(Subject subject) {
		return switch (subject) {
			case Subject.OfHome(var session) -> nameOr(session.home(), session.project().getName());
			case Subject.OfEditor(var sheet) -> sheet.title();
			case Subject.InRoom(var session, FrameOutline frame) -> NLS.bind(Messages.SubjectWords_Frame, frame.id());
			case Subject.InRoom(var session, StripOutline strip) -> StripPropertySource.kind(words, strip) + ' ' + strip.id();
			case Subject.InRoom(var session, RailBand rail) -> words.word("RailBand"); //$NON-NLS-1$
			case Subject.InRoom(var session, Wall wall) -> NLS.bind(Messages.SubjectWords_Wall, nameOr(wall, "")); //$NON-NLS-1$
			case Subject.InRoom(var session, Element element) -> nameOr(element, kind(element));
			case Subject.InRoom(var session, var other) -> ""; //$NON-NLS-1$
		};
	}

	/** Returns its kind and where it is. */
	String subtitle(Subject subject) {
		return switch (subject) {
			case Subject.OfHome home -> words.word("Home"); //$NON-NLS-1$
			case Subject.OfEditor(var sheet) -> sheet.subtitle();
			case Subject.InRoom(var session, FrameOutline frame) -> nameOr(session.room(), ""); //$NON-NLS-1$
			case Subject.InRoom(var session, StripOutline strip) -> nameOr(session.room(), ""); //$NON-NLS-1$
			case Subject.InRoom(var session, RailBand rail) -> nameOr(session.room(), ""); //$NON-NLS-1$
			case Subject.InRoom(var session, Placed placed) -> NLS.bind(Messages.SubjectWords_OnWall,
				new Object[] { kind(placed), placed.eContainer() instanceof Wall wall ? nameOr(wall, "") : "", nameOr(session.room(), "") }); //$NON-NLS-1$ //$NON-NLS-2$ //$NON-NLS-3$
			case Subject.InRoom(var session, Wall wall) -> nameOr(session.room(), ""); //$NON-NLS-1$
			case Subject.InRoom(var session, ReferenceLine line) when line.eContainer() instanceof Wall wall -> NLS.bind(
				Messages.SubjectWords_OnWall, new Object[] { kind(line), nameOr(wall, ""), nameOr(session.room(), "") }); //$NON-NLS-1$ //$NON-NLS-2$
			case Subject.InRoom(var session, ReferenceLine line) -> nameOr(session.room(), ""); //$NON-NLS-1$
			case Subject.InRoom(var session, Element element) -> kind(element);
			case Subject.InRoom(var session, var other) -> ""; //$NON-NLS-1$
		};
	}

	private String kind(Element element) {
		String word = element instanceof Placed placed ? ElementWords.of(placed) : words.of(element.eClass());
		return word.substring(0, 1).toUpperCase(Locale.getDefault()) + word.substring(1);
	}

	private static String nameOr(Element element, String otherwise) {
		return element.getName() == null || element.getName().isBlank() ? otherwise : element.getName();
	}
}
