// SPDX-License-Identifier: EPL-2.0
package wainscribe.rules.layout;

import wainscribe.model.length.Length;
import wainscribe.rules.RuleCheck;
import wainscribe.rules.RuleContext;
import wainscribe.rules.Subject;

/** Finds rooms whose gap between frames lies outside a usual range. */
public final class UnusualGapCheck implements RuleCheck {

	@Override
	public void check(RuleContext context) {
		Length gap = context.layout().gap();
		Length least = context.length("least"); //$NON-NLS-1$
		Length most = context.length("most"); //$NON-NLS-1$
		boolean framed = context.layout().frames().findAny().isPresent() && context.layout().strips().findAny().isEmpty();
		if (framed && (gap.isLessThan(least) || gap.isMoreThan(most))) {
			context.report(Subject.of(context.room()), Messages.UnusualGapCheck_Room, gap, least, most);
		}
	}
}
