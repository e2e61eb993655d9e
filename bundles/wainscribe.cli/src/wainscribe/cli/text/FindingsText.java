// SPDX-License-Identifier: EPL-2.0
package wainscribe.cli.text;

import java.util.Collection;

import wainscribe.rules.Finding;

/** Findings for people: heaviest first within each room. */
public final class FindingsText {

	private FindingsText() {
	}

	/** Returns the text, ending in a line break. */
	public static String of(Collection<Finding> findings) {
		if (findings.isEmpty()) {
			return "No findings.\n"; //$NON-NLS-1$
		}
		StringBuilder text = new StringBuilder();
		String room = null;
		for (Finding finding : findings) {
			if (!finding.room().equals(room)) {
				room = finding.room();
				text.append(text.isEmpty() ? "" : "\n").append(room).append('\n'); //$NON-NLS-1$ //$NON-NLS-2$
			}
			text.append("  ").append(finding.severity().word()).append(place(finding)).append(": ").append(finding.message()) //$NON-NLS-1$ //$NON-NLS-2$
					.append("\n      ").append(finding.rule()).append(" - ").append(finding.source()).append('\n'); //$NON-NLS-1$ //$NON-NLS-2$
		}
		return text.toString();
	}

	private static String place(Finding finding) {
		String place = finding.wall().isEmpty() ? "" : ", wall " + finding.wall(); //$NON-NLS-1$ //$NON-NLS-2$
		return finding.element().isEmpty() ? place : place + ", " + finding.element(); //$NON-NLS-1$
	}
}
