// SPDX-License-Identifier: EPL-2.0
package wainscribe.rules.heat;

import wainscribe.model.Fixture;
import wainscribe.model.FixtureType;
import wainscribe.model.Wall;
import wainscribe.model.length.Length;
import wainscribe.rules.RuleCheck;
import wainscribe.rules.RuleContext;
import wainscribe.rules.Subject;
import wainscribe.rules.measure.AddedBoard;
import wainscribe.rules.measure.Strip;
import wainscribe.rules.measure.SurveyedOutline;
import wainscribe.rules.measure.WallStrips;

/** Finds handrails with too little room for a hand once boards and mouldings are on the wall. */
public final class HandrailCrowdedCheck implements RuleCheck {

	@Override
	public void check(RuleContext context) {
		for (Wall wall : context.walls()) {
			WallStrips strips = WallStrips.of(context.design(), wall);
			wall.getFixtures().stream().filter(fixture -> fixture.getType() == FixtureType.HANDRAIL)
					.forEach(handrail -> check(context, wall, strips, handrail));
		}
	}

	private static void check(RuleContext context, Wall wall, WallStrips strips, Fixture handrail) {
		Length clear = context.length("clear"); //$NON-NLS-1$
		Length moulding = strips.all().stream().filter(strip -> strip.shape().overlaps(SurveyedOutline.of(handrail)))
				.map(Strip::thickness).max(Length::compareTo).orElse(Length.ZERO);
		Length added = AddedBoard.on(wall, context.design().brief()).plus(moulding);
		Subject subject = Subject.of(handrail);
		if (handrail.getGap() == null && added.signum() > 0) {
			context.ask(subject, Messages.HandrailCrowdedCheck_Ask, subject.element(), clear.plus(added));
		} else if (handrail.getGap() != null && handrail.getGap().minus(added).isLessThan(clear)) {
			context.report(subject, Messages.HandrailCrowdedCheck_Near, subject.element(),
					handrail.getGap().minus(added).max(Length.ZERO), clear);
		}
	}
}
