// SPDX-License-Identifier: EPL-2.0
package wainscribe.rules.layout;

import wainscribe.model.Box;
import wainscribe.model.Wall;
import wainscribe.model.length.Length;
import wainscribe.rules.RuleCheck;
import wainscribe.rules.RuleContext;
import wainscribe.rules.Severity;
import wainscribe.rules.Subject;
import wainscribe.rules.measure.SurveyedOutline;
import wainscribe.rules.measure.ThingKinds;
import wainscribe.rules.measure.WallStrips;
import wainscribe.rules.measure.WallStrips.Nearest;

/**
 * Finds switch and outlet plates that a moulding touches or crowds. A plate well inside a frame's field is clear of its
 * strips and so is fine.
 */
public final class PlateTooNearCheck implements RuleCheck {

	@Override
	public void check(RuleContext context) {
		for (Wall wall : context.walls()) {
			WallStrips strips = WallStrips.of(context.design(), wall);
			for (Box box : wall.getBoxes()) {
				if (!ThingKinds.stopsTrim(box)) {
					strips.nearest(SurveyedOutline.of(box)).ifPresent(nearest -> check(context, box, nearest));
				}
			}
		}
	}

	private static void check(RuleContext context, Box box, Nearest nearest) {
		Length clear = context.length("clear"); //$NON-NLS-1$
		Length warn = context.length("warn"); //$NON-NLS-1$
		Subject plate = Subject.of(box);
		if (nearest.gap().signum() == 0) {
			context.report(plate, Messages.PlateTooNearCheck_Touches, plate.element(), nearest.strip().name(), clear);
		} else if (nearest.gap().isLessThan(clear)) {
			context.report(plate, Messages.PlateTooNearCheck_Near, plate.element(), nearest.strip().name(), nearest.gap(),
					clear);
		} else if (nearest.gap().isLessThan(warn)) {
			context.report(Severity.WARNING, plate, Messages.PlateTooNearCheck_Tight, plate.element(),
					nearest.strip().name(), nearest.gap(), warn);
		}
	}
}
