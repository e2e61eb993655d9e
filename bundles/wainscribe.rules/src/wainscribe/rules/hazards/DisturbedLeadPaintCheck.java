// SPDX-License-Identifier: EPL-2.0
package wainscribe.rules.hazards;

import java.util.List;

import wainscribe.rules.RuleCheck;
import wainscribe.rules.RuleContext;
import wainscribe.rules.Subject;

/** Finds old paint that the work disturbs in a home old enough for it to hold lead. Asks for the year where it is unknown. */
public final class DisturbedLeadPaintCheck implements RuleCheck {

	@Override
	public void check(RuleContext context) {
		List<Subject> disturbed = DisturbedPaint.in(context.room());
		int year = context.number("year").intValueExact(); //$NON-NLS-1$
		if (disturbed.isEmpty()) {
			return;
		}
		if (context.home().getBuilt() == null) {
			context.ask(Subject.of(context.room()), Messages.DisturbedLeadPaintCheck_Ask, disturbed.getFirst().element(), year);
		} else if (context.home().getBuilt() < year) {
			disturbed.forEach(subject -> context.report(subject, Messages.DisturbedLeadPaintCheck_Old, subject.element(),
					context.home().getBuilt(), year));
		}
	}
}
