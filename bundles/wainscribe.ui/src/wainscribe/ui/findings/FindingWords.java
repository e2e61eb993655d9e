// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.findings;

import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.eclipse.osgi.util.NLS;

import wainscribe.rules.Finding;
import wainscribe.rules.Severity;
import wainscribe.rules.Subject;

/** Says findings in text. */
final class FindingWords {

	private static final String BETWEEN = " \u00b7 "; //$NON-NLS-1$

	private FindingWords() {
	}

	/** Says where on which wall: "A · outlet by the door"; the whole room if nowhere in particular. */
	static String place(Finding finding) {
		String wall = finding.wall().isEmpty() ? "" : NLS.bind(Messages.FindingWords_Wall, finding.wall()); //$NON-NLS-1$
		String place = Stream.of(wall, element(finding)).filter(part -> !part.isEmpty()).collect(Collectors.joining(BETWEEN));
		return place.isEmpty() ? Messages.FindingWords_WholeRoom : place;
	}

	/** Says where, with the room. */
	static String placeInHome(Finding finding) {
		return finding.room() + BETWEEN + place(finding);
	}

	/** Says how much a finding weighs. */
	static String of(Severity severity) {
		return switch (severity) {
			case ERROR -> Messages.FindingWords_Error;
			case WARNING -> Messages.FindingWords_Warning;
			case ADVICE -> Messages.FindingWords_Advice;
		};
	}

	/** Writes a finding for the clipboard, in one line. */
	static String line(Finding finding) {
		return NLS.bind(Messages.FindingWords_Line,
			new Object[] { of(finding.severity()), placeInHome(finding), finding.message(), finding.source() });
	}

	/**
	 * Returns by what the thing is selected in an editor: its id, the id of a frame, {@code rail} or {@code base}.
	 * Derived things are known to findings by the id of their wall and their own.
	 */
	static String selectionKey(Finding finding) {
		if (finding.element().isEmpty()) {
			return ""; //$NON-NLS-1$
		}
		return finding.elementId().endsWith('/' + finding.element()) ? finding.element() : finding.elementId();
	}

	private static String element(Finding finding) {
		return switch (finding.element()) {
			case Subject.RAIL -> Messages.FindingWords_Rail;
			case Subject.BASE -> Messages.FindingWords_Base;
			default -> finding.elementId().endsWith('/' + finding.element()) && !finding.element().isEmpty()
				? NLS.bind(Messages.FindingWords_Frame, finding.element()) : finding.element();
		};
	}
}
