// SPDX-License-Identifier: EPL-2.0
package wainscribe.rules.layout;

import java.util.Optional;

import wainscribe.model.Fixture;
import wainscribe.model.FixtureType;
import wainscribe.model.Wall;
import wainscribe.model.length.Length;
import wainscribe.rules.RuleCheck;
import wainscribe.rules.RuleContext;
import wainscribe.rules.Subject;
import wainscribe.rules.measure.Strip;
import wainscribe.rules.measure.SurveyedOutline;
import wainscribe.rules.measure.WallStrips;

/** Finds toilet tanks with moulding behind them that has too little room. */
public final class TankCrowdedCheck implements RuleCheck {

	@Override
	public void check(RuleContext context) {
		for (Wall wall : context.walls()) {
			WallStrips strips = WallStrips.of(context.design(), wall);
			wall.getFixtures().stream().filter(fixture -> fixture.getType() == FixtureType.TOILET)
					.forEach(toilet -> check(context, strips, toilet));
		}
	}

	private static void check(RuleContext context, WallStrips strips, Fixture toilet) {
		Optional<Strip> behind = strips.crossing(SurveyedOutline.of(toilet));
		if (behind.isEmpty()) {
			return;
		}
		Length clear = context.length("clear"); //$NON-NLS-1$
		Length thickness = behind.get().thickness();
		Subject subject = Subject.of(toilet);
		if (toilet.getTankGap() == null) {
			context.ask(subject, Messages.TankCrowdedCheck_Ask, subject.element(), thickness.plus(clear));
		} else if (toilet.getTankGap().minus(thickness).isLessThan(clear)) {
			context.report(subject, Messages.TankCrowdedCheck_Near, subject.element(), toilet.getTankGap(), thickness,
					thickness.plus(clear));
		}
	}
}
