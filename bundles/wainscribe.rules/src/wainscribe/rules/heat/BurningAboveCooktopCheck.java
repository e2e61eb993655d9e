// SPDX-License-Identifier: EPL-2.0
package wainscribe.rules.heat;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

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

/** Finds ranges and cooktops with mouldings, cabinets or shelves that burn too low above them. */
public final class BurningAboveCooktopCheck implements RuleCheck {

	private static final Set<FixtureType> COOKING = EnumSet.of(FixtureType.RANGE, FixtureType.COOKTOP);
	private static final Set<FixtureType> BURNING = EnumSet.of(FixtureType.CABINET, FixtureType.SHELF, FixtureType.ART);

	@Override
	public void check(RuleContext context) {
		for (Wall wall : context.walls()) {
			List<Strip> strips = ThingKinds.burns(context.layout().material())
					? WallStrips.of(context.design(), wall).all() : List.of();
			wall.getFixtures().stream().filter(fixture -> COOKING.contains(fixture.getType()))
					.forEach(cooktop -> check(context, wall, strips, cooktop));
		}
	}

	private static void check(RuleContext context, Wall wall, List<Strip> strips, Fixture cooktop) {
		Length above = context.length("above"); //$NON-NLS-1$
		Outline top = SurveyedOutline.of(cooktop);
		Outline zone = new Outline(top.x0(), top.y1(), top.x1(), top.y1().plus(above));
		Optional<Strip> strip = strips.stream().filter(candidate -> candidate.shape().overlaps(zone)).findFirst();
		Optional<Fixture> thing = wall.getFixtures().stream().filter(fixture -> BURNING.contains(fixture.getType()))
				.filter(fixture -> SurveyedOutline.of(fixture).overlaps(zone)).findFirst();
		Subject subject = Subject.of(cooktop);
		if (strip.isPresent()) {
			context.report(subject, Messages.BurningAboveCooktopCheck_Above, strip.get().name(),
					strip.get().shape().bounds().y0().minus(top.y1()).max(Length.ZERO), subject.element(), above);
		} else if (thing.isPresent()) {
			context.report(subject, Messages.BurningAboveCooktopCheck_Above, Subject.of(thing.get()).element(),
					SurveyedOutline.of(thing.get()).y0().minus(top.y1()).max(Length.ZERO), subject.element(), above);
		}
	}
}
