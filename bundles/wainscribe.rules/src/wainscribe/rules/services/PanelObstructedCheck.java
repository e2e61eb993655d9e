// SPDX-License-Identifier: EPL-2.0
package wainscribe.rules.services;

import wainscribe.model.Box;
import wainscribe.model.Wall;
import wainscribe.model.length.Length;
import wainscribe.model.outline.Outline;
import wainscribe.rules.RuleCheck;
import wainscribe.rules.RuleContext;
import wainscribe.rules.Subject;
import wainscribe.rules.measure.SurveyedOutline;
import wainscribe.rules.measure.ThingKinds;

/** Finds electrical panels in a bathroom, or without the clear width that working on them takes. */
public final class PanelObstructedCheck implements RuleCheck {

	@Override
	public void check(RuleContext context) {
		for (Wall wall : context.walls()) {
			wall.getBoxes().stream().filter(ThingKinds::stopsTrim).forEach(panel -> check(context, wall, panel));
		}
	}

	private static void check(RuleContext context, Wall wall, Box panel) {
		Subject subject = Subject.of(panel);
		Length width = context.length("width"); //$NON-NLS-1$
		Length clear = clearWidth(context, wall, SurveyedOutline.of(panel));
		if (ThingKinds.isBathroom(context.room().getUse())) {
			context.report(subject, Messages.PanelObstructedCheck_Bath, subject.element());
		} else if (clear.isLessThan(width)) {
			context.report(subject, Messages.PanelObstructedCheck_Width, subject.element(), clear, width);
		}
	}

	/** Returns the width free of standing things that holds the panel; zero if something stands before it. */
	private static Length clearWidth(RuleContext context, Wall wall, Outline panel) {
		Length left = Length.ZERO;
		Length right = wall.getLength();
		for (var fixture : wall.getFixtures()) {
			Outline outline = SurveyedOutline.of(fixture);
			boolean stands = SurveyedOutline.orZero(fixture.getDepth()).signum() > 0
					&& outline.y0().isLessThan(context.length("height")); //$NON-NLS-1$
			if (stands && !outline.x1().isMoreThan(panel.x0())) {
				left = left.max(outline.x1());
			} else if (stands && !outline.x0().isLessThan(panel.x1())) {
				right = right.min(outline.x0());
			} else if (stands) {
				return Length.ZERO;
			}
		}
		return right.minus(left);
	}
}
