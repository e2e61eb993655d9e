// SPDX-License-Identifier: EPL-2.0
package wainscribe.rules.trim;

import wainscribe.model.Fixture;
import wainscribe.model.Material;
import wainscribe.model.Wall;
import wainscribe.model.length.Length;
import wainscribe.model.outline.Outline;
import wainscribe.rules.RuleCheck;
import wainscribe.rules.RuleContext;
import wainscribe.rules.Subject;
import wainscribe.rules.measure.Clearances;
import wainscribe.rules.measure.SurveyedOutline;
import wainscribe.rules.measure.ThingKinds;

/** Finds tubs, showers and basins with standard fibreboard mouldings within reach of their water. */
public final class WetBoardCheck implements RuleCheck {

	@Override
	public void check(RuleContext context) {
		if (context.layout().material() != Material.MDF) {
			return;
		}
		Clearances clearances = new Clearances(context.design());
		for (Wall wall : context.walls()) {
			wall.getFixtures().stream().filter(ThingKinds::isWet).forEach(fixture -> check(context, clearances, fixture));
		}
	}

	private static void check(RuleContext context, Clearances clearances, Fixture fixture) {
		Length away = context.length("away"); //$NON-NLS-1$
		Outline wet = SurveyedOutline.of(fixture).grown(SurveyedOutline.orZero(fixture.getWetEdge()).max(Length.ZERO));
		Subject subject = Subject.of(fixture);
		clearances.nearestStrip(fixture, wet).filter(nearest -> nearest.gap().isLessThan(away))
				.ifPresent(nearest -> context.report(subject, Messages.WetBoardCheck_Near, subject.element(),
						nearest.strip().name(), nearest.gap(), away));
	}
}
