// SPDX-License-Identifier: EPL-2.0
package wainscribe.rules.services;

import java.util.Optional;

import wainscribe.model.Box;
import wainscribe.model.Fixture;
import wainscribe.model.FixtureType;
import wainscribe.model.Wall;
import wainscribe.rules.RuleCheck;
import wainscribe.rules.RuleContext;
import wainscribe.rules.Subject;
import wainscribe.rules.measure.SurveyedOutline;

/** Finds electrical boxes behind a mirror or the frame it gets. */
public final class BuriedBoxCheck implements RuleCheck {

	@Override
	public void check(RuleContext context) {
		for (Wall wall : context.walls()) {
			wall.getBoxes().forEach(box -> check(context, wall, box));
		}
	}

	private static void check(RuleContext context, Wall wall, Box box) {
		Optional<Fixture> cover = wall.getFixtures().stream().filter(fixture -> fixture.getType() == FixtureType.MIRROR)
				.filter(mirror -> SurveyedOutline.covered(context.design(), mirror).overlaps(SurveyedOutline.of(box))).findFirst();
		Subject subject = Subject.of(box);
		cover.ifPresent(mirror -> context.report(subject, Messages.BuriedBoxCheck_Behind, subject.element(),
				Subject.of(mirror).element()));
	}
}
