// SPDX-License-Identifier: EPL-2.0
package wainscribe.rules.trim;

import wainscribe.model.Wall;
import wainscribe.model.length.Length;
import wainscribe.model.outline.Outline;
import wainscribe.rules.RuleCheck;
import wainscribe.rules.RuleContext;
import wainscribe.rules.Subject;
import wainscribe.rules.measure.WallStrips;

/** Finds walls on which the rail is longer than the longest length sold, so that it has to be joined. */
public final class RailNeedsJointCheck implements RuleCheck {

	@Override
	public void check(RuleContext context) {
		context.design().brief().longestStock().ifPresent(stock -> {
			for (Wall wall : context.walls()) {
				Length longest = WallStrips.of(context.design(), wall).rail().stream()
						.map(strip -> strip.shape().bounds()).map(Outline::width).max(Length::compareTo).orElse(Length.ZERO);
				if (longest.isMoreThan(stock)) {
					context.report(Subject.rail(wall), Messages.RailNeedsJointCheck_Long, wall.getName(), longest, stock);
				}
			}
		});
	}
}
