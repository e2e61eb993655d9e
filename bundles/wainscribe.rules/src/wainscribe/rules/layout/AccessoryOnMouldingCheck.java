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

/** Finds bars, rings, hooks, holders and wall lights that would not sit on flat wall. */
public final class AccessoryOnMouldingCheck implements RuleCheck {

	@Override
	public void check(RuleContext context) {
		for (Wall wall : context.walls()) {
			WallStrips strips = WallStrips.of(context.design(), wall);
			wall.getFixtures().stream()
					.filter(fixture -> ThingKinds.isAccessory(fixture) && !Boolean.TRUE.equals(fixture.getBehind()))
					.forEach(accessory -> check(context, strips, accessory));
		}
	}

	private static void check(RuleContext context, WallStrips strips, Fixture accessory) {
		Length clear = context.length("clear"); //$NON-NLS-1$
		Subject subject = Subject.of(accessory);
		strips.nearest(SurveyedOutline.of(accessory)).filter(nearest -> nearest.gap().isLessThan(clear))
				.ifPresent(nearest -> context.report(subject, Messages.AccessoryOnMouldingCheck_Near, subject.element(),
						nearest.strip().name(), nearest.gap(), clear));
	}
}
