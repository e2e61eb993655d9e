// SPDX-License-Identifier: EPL-2.0
package wainscribe.rules.layout;

import wainscribe.model.Fixture;
import wainscribe.model.Wall;
import wainscribe.model.length.Length;
import wainscribe.rules.RuleCheck;
import wainscribe.rules.RuleContext;
import wainscribe.rules.Subject;
import wainscribe.rules.measure.SurveyedOutline;
import wainscribe.rules.measure.ThingKinds;
import wainscribe.rules.measure.WallStrips;

/** Finds thermostats and keypads that a moulding crowds. */
public final class ControlCrowdedCheck implements RuleCheck {

	@Override
	public void check(RuleContext context) {
		for (Wall wall : context.walls()) {
			WallStrips strips = WallStrips.of(context.design(), wall);
			wall.getFixtures().stream().filter(ThingKinds::isControl).forEach(control -> check(context, strips, control));
		}
	}

	private static void check(RuleContext context, WallStrips strips, Fixture control) {
		Length clear = context.length("clear"); //$NON-NLS-1$
		Subject subject = Subject.of(control);
		strips.nearest(SurveyedOutline.of(control)).filter(nearest -> nearest.gap().isLessThan(clear))
				.ifPresent(nearest -> context.report(subject, Messages.ControlCrowdedCheck_Near, subject.element(),
						nearest.strip().name(), nearest.gap(), clear));
	}
}
