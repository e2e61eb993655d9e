// SPDX-License-Identifier: EPL-2.0
package wainscribe.rules.heat;

import java.util.Comparator;
import java.util.EnumSet;
import java.util.Set;

import wainscribe.model.Fixture;
import wainscribe.model.FixtureType;
import wainscribe.model.Wall;
import wainscribe.model.length.Length;
import wainscribe.model.outline.Outline;
import wainscribe.rules.RuleCheck;
import wainscribe.rules.RuleContext;
import wainscribe.rules.Subject;
import wainscribe.rules.measure.SurveyedOutline;
import wainscribe.rules.measure.ThingKinds;
import wainscribe.rules.measure.WallStrips;
import wainscribe.rules.measure.WallStrips.Nearest;

/** Finds ranges and cooktops with mouldings that burn close beside them, where the appliance's own figures count. */
public final class BurningBesideRangeCheck implements RuleCheck {

	private static final Set<FixtureType> COOKING = EnumSet.of(FixtureType.RANGE, FixtureType.COOKTOP);

	@Override
	public void check(RuleContext context) {
		if (!ThingKinds.burns(context.layout().material())) {
			return;
		}
		for (Wall wall : context.walls()) {
			WallStrips strips = WallStrips.of(context.design(), wall);
			wall.getFixtures().stream().filter(fixture -> COOKING.contains(fixture.getType()))
					.forEach(range -> check(context, strips, range));
		}
	}

	/** Only what is beside counts; what is above has a rule of its own. */
	private static void check(RuleContext context, WallStrips strips, Fixture range) {
		Length beside = context.length("beside"); //$NON-NLS-1$
		Outline outline = SurveyedOutline.of(range);
		Subject subject = Subject.of(range);
		strips.all().stream().filter(strip -> strip.shape().bounds().clearX(outline).signum() > 0)
				.map(strip -> new Nearest(strip, strip.shape().gapTo(outline)))
				.filter(nearest -> nearest.gap().isLessThan(beside)).min(Comparator.comparing(Nearest::gap))
				.ifPresent(nearest -> context.report(subject, Messages.BurningBesideRangeCheck_Beside, subject.element(),
						nearest.strip().name(), nearest.gap(), beside));
	}
}
