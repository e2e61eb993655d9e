// SPDX-License-Identifier: EPL-2.0
package wainscribe.rules.layout;

import wainscribe.model.length.Length;
import wainscribe.rules.RuleCheck;
import wainscribe.rules.RuleContext;
import wainscribe.rules.Subject;

/** Finds rooms whose gap above and below frames lies outside the usual range. */
public final class UnusualEdgeGapCheck implements RuleCheck {

	@Override
	public void check(RuleContext context) {
		Length gap = context.layout().gapY();
		Length least = context.length("least"); //$NON-NLS-1$
		Length most = context.length("most"); //$NON-NLS-1$
		boolean framed = context.layout().frames().findAny().isPresent() && context.layout().strips().findAny().isEmpty();
		if (framed && (gap.isLessThan(least) || gap.isMoreThan(most))) {
			context.report(Subject.of(context.room()), Messages.UnusualEdgeGapCheck_Room, gap, least, most);
		}
	}
}
