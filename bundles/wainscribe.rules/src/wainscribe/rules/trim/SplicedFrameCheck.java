// SPDX-License-Identifier: EPL-2.0
package wainscribe.rules.trim;

import wainscribe.layout.FrameOutline;
import wainscribe.layout.Member;
import wainscribe.layout.WallLayout;
import wainscribe.model.length.Length;
import wainscribe.rules.RuleCheck;
import wainscribe.rules.RuleContext;
import wainscribe.rules.Subject;

/** Finds frames with a side longer than the longest length sold, so that it could not be one piece. */
public final class SplicedFrameCheck implements RuleCheck {

	@Override
	public void check(RuleContext context) {
		context.design().brief().longestStock().ifPresent(stock -> {
			for (WallLayout wall : context.layout().walls()) {
				wall.members().filter(member -> longestSide(member).isMoreThan(stock))
						.forEach(member -> context.report(Subject.of(wall.wall(), member),
								member instanceof FrameOutline ? Messages.SplicedFrameCheck_Side : Messages.SplicedFrameCheck_Strip,
								member.id(), longestSide(member), stock));
			}
		});
	}

	private static Length longestSide(Member frame) {
		Length right = frame.height().plus(frame.riseTop()).minus(frame.rise());
		return along(frame.width(), frame.rise()).max(along(frame.width(), frame.riseTop())).max(frame.height()).max(right);
	}

	/** Returns the length of a side that climbs; exact where it is level. */
	private static Length along(Length width, Length climb) {
		return climb.signum() == 0 ? width : new Length(Math.round(Math.hypot(width.units(), climb.units())));
	}
}
