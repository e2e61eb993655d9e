// SPDX-License-Identifier: EPL-2.0
package wainscribe.rules.layout;

import wainscribe.model.length.Length;
import wainscribe.rules.RuleCheck;
import wainscribe.rules.RuleContext;

/** Finds a tall wainscot that does not stop at two thirds of the wall. */
public final class RailOffTwoThirdsCheck implements RuleCheck {

	@Override
	public void check(RuleContext context) {
		RailShare.of(context).filter(share -> share.percent().compareTo(context.number("high")) > 0).ifPresent(share -> { //$NON-NLS-1$
			Length twoThirds = share.height().times(2).dividedBy(3);
			if (share.top().minus(twoThirds).abs().isMoreThan(context.length("tolerance"))) { //$NON-NLS-1$
				context.report(share.subject(), Messages.RailOffTwoThirdsCheck_Room, share.top(), share.height(), twoThirds);
			}
		});
	}
}
