// SPDX-License-Identifier: EPL-2.0
package wainscribe.report.view;

import java.util.StringJoiner;

import wainscribe.rules.Finding;
import wainscribe.rules.Severity;

/**
 * An open finding as a client reads it.
 *
 * @param severity error, warning or advice
 * @param where    room, wall and element
 * @param message  what is wrong
 * @param source   where the rule comes from
 */
public record FindingView(String severity, String where, String message, String source) {

	/** Tells whether the finding is a guideline only. */
	public boolean isAdvice() {
		return severity.equals(Severity.ADVICE.word());
	}

	static FindingView of(Finding finding) {
		StringJoiner where = new StringJoiner(" \u203a ");
		for (String part : new String[] { finding.room(), finding.wall(), finding.element() }) {
			if (!part.isBlank()) {
				where.add(part);
			}
		}
		return new FindingView(finding.severity().word(), where.toString(), finding.message(), finding.source());
	}
}
