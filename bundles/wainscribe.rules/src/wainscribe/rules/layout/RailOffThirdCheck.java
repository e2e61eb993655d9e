// SPDX-License-Identifier: EPL-2.0
package wainscribe.rules.layout;

import wainscribe.model.length.Length;
import wainscribe.rules.RuleCheck;
import wainscribe.rules.RuleContext;

/**
 * Finds a low rail that keeps to neither of the usual heights: one third of the wall, or the band that older rooms show.
 */
public final class RailOffThirdCheck implements RuleCheck {

	@Override
	public void check(RuleContext context) {
		RailShare.of(context).filter(share -> share.percent().compareTo(context.number("low")) < 0).ifPresent(share -> { //$NON-NLS-1$
			Length third = share.height().dividedBy(3);
			boolean nearThird = !share.top().minus(third).abs().isMoreThan(context.length("tolerance")); //$NON-NLS-1$
			boolean inBand = !share.top().isLessThan(context.length("bandLeast")) //$NON-NLS-1$
					&& !share.top().isMoreThan(context.length("bandMost")); //$NON-NLS-1$
			if (!nearThird && !inBand) {
				context.report(share.subject(), Messages.RailOffThirdCheck_Room, share.top(), share.height(), third);
			}
		});
	}
}
