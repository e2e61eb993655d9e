// SPDX-License-Identifier: EPL-2.0
package wainscribe.rules.hazards;

import wainscribe.model.Finish;
import wainscribe.rules.RuleCheck;
import wainscribe.rules.RuleContext;
import wainscribe.rules.RuleProfiles;
import wainscribe.rules.Subject;

/** Finds textured coats that the work disturbs although they may hold asbestos. A home of unknown age counts as old. */
public final class DisturbedTextureCheck implements RuleCheck {

	@Override
	public void check(RuleContext context) {
		boolean american = RuleProfiles.of(context.home()).contains(RuleProfiles.UNITED_STATES);
		int year = context.number(american ? "yearUs" : "year").intValueExact(); //$NON-NLS-1$ //$NON-NLS-2$
		Integer built = context.home().getBuilt();
		if (built != null && built >= year) {
			return;
		}
		for (Finish finish : context.room().getFinishes()) {
			if (Boolean.TRUE.equals(finish.getTexture()) && Boolean.TRUE.equals(finish.getDisturb())) {
				context.report(Subject.of(finish), Messages.DisturbedTextureCheck_Suspect, Subject.of(finish).element());
			}
		}
	}
}
