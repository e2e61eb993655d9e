// SPDX-License-Identifier: EPL-2.0
package wainscribe.rules.hazards;

import wainscribe.model.Finish;
import wainscribe.rules.RuleCheck;
import wainscribe.rules.RuleContext;
import wainscribe.rules.Subject;

/** Finds textured coats old enough to hold asbestos. Asks for the year where it is unknown. */
public final class SuspectTextureCheck implements RuleCheck {

	@Override
	public void check(RuleContext context) {
		int year = context.number("year").intValueExact(); //$NON-NLS-1$
		for (Finish finish : context.room().getFinishes()) {
			if (Boolean.TRUE.equals(finish.getTexture())) {
				check(context, finish, year);
			}
		}
	}

	private static void check(RuleContext context, Finish finish, int year) {
		Subject subject = Subject.of(finish);
		Integer built = context.home().getBuilt();
		if (built == null) {
			context.ask(subject, Messages.SuspectTextureCheck_Ask, subject.element(), year);
		} else if (built < year) {
			context.report(subject, Messages.SuspectTextureCheck_Old, subject.element(), built, year);
		}
	}
}
