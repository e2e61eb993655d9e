// SPDX-License-Identifier: EPL-2.0
package wainscribe.rules.heat;

import java.util.Comparator;

import wainscribe.model.Fixture;
import wainscribe.model.FixtureType;
import wainscribe.model.Wall;
import wainscribe.model.length.Length;
import wainscribe.model.outline.Outline;
import wainscribe.rules.RuleCheck;
import wainscribe.rules.RuleContext;
import wainscribe.rules.Subject;
import wainscribe.rules.measure.Strip;
import wainscribe.rules.measure.SurveyedOutline;
import wainscribe.rules.measure.ThingKinds;
import wainscribe.rules.measure.WallStrips;
import wainscribe.rules.measure.WallStrips.Nearest;

/**
 * Finds fireplaces with mouldings that burn too near the fire opening, or standing out too far in the belt round it. The
 * projection allowed there grows with the distance, or is one figure, as the rule says.
 */
public final class BurningNearFireCheck implements RuleCheck {

	@Override
	public void check(RuleContext context) {
		if (!ThingKinds.burns(context.layout().material())) {
			return;
		}
		for (Wall wall : context.walls()) {
			WallStrips strips = WallStrips.of(context.design(), wall);
			wall.getFixtures().stream().filter(fixture -> fixture.getType() == FixtureType.FIREPLACE)
					.forEach(fireplace -> check(context, strips, fireplace));
		}
	}

	private static void check(RuleContext context, WallStrips strips, Fixture fireplace) {
		Length clear = context.length("clear"); //$NON-NLS-1$
		Outline fire = SurveyedOutline.fireOpening(fireplace);
		Subject subject = Subject.of(fireplace);
		var near = strips.nearest(fire).filter(nearest -> nearest.gap().isLessThan(clear));
		if (near.isPresent()) {
			context.report(subject, Messages.BurningNearFireCheck_Near, subject.element(), near.get().strip().name(),
					near.get().gap(), clear);
			return;
		}
		strips.all().stream().map(strip -> new Nearest(strip, strip.shape().gapTo(fire)))
				.filter(nearest -> standsOut(context, fire, nearest)).min(Comparator.comparing(Nearest::gap))
				.ifPresent(nearest -> context.report(subject, Messages.BurningNearFireCheck_Proud, subject.element(),
						nearest.strip().name(), nearest.gap(), nearest.strip().thickness(), allowed(context, nearest.gap())));
	}

	private static boolean standsOut(RuleContext context, Outline fire, Nearest nearest) {
		Strip strip = nearest.strip();
		boolean above = !strip.shape().bounds().y0().isLessThan(fire.y1());
		boolean counts = above || context.number("onlyAbove").signum() == 0; //$NON-NLS-1$
		return counts && nearest.gap().isLessThan(context.length("belt")) //$NON-NLS-1$
				&& strip.thickness().isMoreThan(allowed(context, nearest.gap()));
	}

	private static Length allowed(RuleContext context, Length gap) {
		int share = context.number("share").intValueExact(); //$NON-NLS-1$
		return share == 0 ? context.length("projection") : gap.dividedBy(share); //$NON-NLS-1$
	}
}
