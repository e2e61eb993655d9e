// SPDX-License-Identifier: EPL-2.0
package wainscribe.rules.layout;

import wainscribe.model.Box;
import wainscribe.model.Fixture;
import wainscribe.model.Opening;
import wainscribe.model.Placed;
import wainscribe.model.Wall;
import wainscribe.model.outline.Outline;
import wainscribe.rules.RuleCheck;
import wainscribe.rules.RuleContext;
import wainscribe.rules.Subject;
import wainscribe.rules.measure.SurveyedOutline;
import wainscribe.rules.measure.ThingKinds;
import wainscribe.rules.measure.WallStrips;

/** Finds fixtures, doors and windows that a moulding would have to run through. */
public final class MouldingThroughFixtureCheck implements RuleCheck {

	@Override
	public void check(RuleContext context) {
		for (Wall wall : context.walls()) {
			WallStrips strips = WallStrips.of(context.design(), wall);
			for (Opening opening : wall.getOpenings()) {
				check(context, strips, opening, SurveyedOutline.cased(opening));
			}
			for (Fixture fixture : wall.getFixtures()) {
				if (ThingKinds.stopsTrim(fixture)) {
					check(context, strips, fixture, SurveyedOutline.covered(context.design(), fixture));
				}
			}
			for (Box box : wall.getBoxes()) {
				if (ThingKinds.stopsTrim(box)) {
					check(context, strips, box, SurveyedOutline.of(box));
				}
			}
		}
	}

	private static void check(RuleContext context, WallStrips strips, Placed thing, Outline outline) {
		strips.crossing(outline).ifPresent(strip -> context.report(Subject.of(thing),
				Messages.MouldingThroughFixtureCheck_Crossed, strip.name(), Subject.of(thing).element()));
	}
}
