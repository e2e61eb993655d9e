// SPDX-License-Identifier: EPL-2.0
package wainscribe.rules.trim;

import wainscribe.model.length.Length;
import wainscribe.rules.RuleCheck;
import wainscribe.rules.RuleContext;
import wainscribe.rules.Subject;

/** Finds walls with pipes in them into whose framing the nails reach too far. */
public final class NailInPlumbingWallCheck implements RuleCheck {

	@Override
	public void check(RuleContext context) {
		Length most = context.length("bite"); //$NON-NLS-1$
		NailBite.deepest(context).stream()
				.filter(bite -> Boolean.TRUE.equals(bite.wall().getPlumbing()) && bite.bite().isMoreThan(most))
				.forEach(bite -> context.report(Subject.of(bite.wall()), Messages.NailInPlumbingWallCheck_Wall,
						bite.wall().getName(), context.design().brief().nail(), bite.bite(), most));
	}
}
