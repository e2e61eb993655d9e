// SPDX-License-Identifier: EPL-2.0
package wainscribe.rules.trim;

import java.util.Comparator;

import wainscribe.model.length.Length;
import wainscribe.rules.RuleCheck;
import wainscribe.rules.RuleContext;
import wainscribe.rules.Subject;

/** Finds nails too short to hold the rail: they would hardly reach into the framing. */
public final class ShallowNailCheck implements RuleCheck {

	@Override
	public void check(RuleContext context) {
		Length least = context.length("bite"); //$NON-NLS-1$
		NailBite.ofRail(context).stream().filter(bite -> bite.bite().isLessThan(least))
				.min(Comparator.comparing(NailBite::bite))
				.ifPresent(bite -> context.report(Subject.rail(bite.wall()), Messages.ShallowNailCheck_Rail,
						context.design().brief().nail(), bite.moulding(), bite.board(), bite.bite().max(Length.ZERO), least));
	}
}
