// SPDX-License-Identifier: EPL-2.0
package wainscribe.rules.layout;

import wainscribe.model.Wall;
import wainscribe.model.length.Length;
import wainscribe.rules.RuleCheck;
import wainscribe.rules.RuleContext;
import wainscribe.rules.Subject;
import wainscribe.rules.measure.WallStrips;

/** Finds walls too far out of straight for moulding to lie flat. A long wall may bow more, in proportion. */
public final class BowedWallCheck implements RuleCheck {

	@Override
	public void check(RuleContext context) {
		for (Wall wall : context.walls()) {
			if (wall.getBow() != null && !WallStrips.of(context.design(), wall).isEmpty()) {
				check(context, wall);
			}
		}
	}

	private static void check(RuleContext context, Wall wall) {
		Length bow = wall.getBow().abs();
		Length most = context.length("bow"); //$NON-NLS-1$
		Length over = context.length("over"); //$NON-NLS-1$
		Length length = wall.getLength().max(over);
		Length overStraightedge = new Length(Math.round((double) bow.units() * over.units() / length.units()));
		if (overStraightedge.isMoreThan(most)) {
			context.report(Subject.of(wall), Messages.BowedWallCheck_Wall, wall.getName(), bow, wall.getLength(), most, over);
		}
	}
}
