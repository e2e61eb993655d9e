// SPDX-License-Identifier: EPL-2.0
package wainscribe.rules.layout;

import java.math.BigDecimal;

import wainscribe.rules.RuleCheck;
import wainscribe.rules.RuleContext;

/** Finds a rail that cuts the wall near its middle. */
public final class RailAtMidHeightCheck implements RuleCheck {

	@Override
	public void check(RuleContext context) {
		RailShare.of(context).ifPresent(share -> {
			BigDecimal percent = share.percent();
			if (percent.compareTo(context.number("least")) >= 0 && percent.compareTo(context.number("most")) <= 0) { //$NON-NLS-1$ //$NON-NLS-2$
				context.report(share.subject(), Messages.RailAtMidHeightCheck_Room, share.top(), share.percentShown(),
						share.height(), share.height().dividedBy(3), share.height().times(2).dividedBy(3));
			}
		});
	}
}
