// SPDX-License-Identifier: EPL-2.0
package wainscribe.rules.heat;

import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;

import wainscribe.model.Fixture;
import wainscribe.model.FixtureType;
import wainscribe.model.HeatSource;
import wainscribe.model.Wall;
import wainscribe.model.length.Length;
import wainscribe.model.outline.Outline;
import wainscribe.rules.RuleCheck;
import wainscribe.rules.RuleContext;
import wainscribe.rules.Severity;
import wainscribe.rules.Subject;
import wainscribe.rules.measure.Clearances;
import wainscribe.rules.measure.SurveyedOutline;
import wainscribe.rules.measure.ThingKinds;
import wainscribe.rules.measure.WallStrips;
import wainscribe.rules.measure.WallStrips.Nearest;

/**
 * Finds electric heaters with mouldings or shelves that burn too near. Round a corner it only warns: there a layout of one wall
 * cannot keep the distance by itself. Asks what heats a heater where that is not recorded.
 */
public final class BurningNearHeaterCheck implements RuleCheck {

	private static final Set<FixtureType> BURNING = EnumSet.of(FixtureType.SHELF, FixtureType.ART);

	@Override
	public void check(RuleContext context) {
		Clearances clearances = new Clearances(context.design());
		for (Wall wall : context.walls()) {
			wall.getFixtures().stream().filter(fixture -> fixture.getType() == FixtureType.HEATER)
					.forEach(heater -> check(context, clearances, wall, heater));
		}
	}

	private static void check(RuleContext context, Clearances clearances, Wall wall, Fixture heater) {
		Length clear = context.length("clear"); //$NON-NLS-1$
		Outline outline = SurveyedOutline.of(heater);
		Subject subject = Subject.of(heater);
		boolean electric = heater.getHeat() == HeatSource.ELECTRIC;
		Optional<Nearest> moulding = nearest(context, clearances, wall, heater).filter(near -> near.gap().isLessThan(clear));
		Optional<Fixture> thing = wall.getFixtures().stream().filter(fixture -> BURNING.contains(fixture.getType()))
				.filter(fixture -> SurveyedOutline.of(fixture).overlaps(outline.grown(clear))).findFirst();
		if (electric && moulding.isPresent()) {
			Severity severity = moulding.get().strip().wall() == wall ? context.severity() : Severity.WARNING;
			context.report(severity, subject, Messages.BurningNearHeaterCheck_Moulding, subject.element(),
					moulding.get().strip().name(), moulding.get().gap(), clear);
		} else if (electric && thing.isPresent()) {
			context.report(subject, Messages.BurningNearHeaterCheck_Thing, subject.element(),
					Subject.of(thing.get()).element(), clearances.between(heater, thing.get()), clear);
		} else if (heater.getHeat() == HeatSource.UNRECORDED && (moulding.isPresent() || thing.isPresent())) {
			context.ask(subject, Messages.BurningNearHeaterCheck_Ask, subject.element(), clear);
		}
	}

	/** Returns the nearest moulding that burns: that on the heater's own wall if it is too near, else that of the room. */
	private static Optional<Nearest> nearest(RuleContext context, Clearances clearances, Wall wall, Fixture heater) {
		if (!ThingKinds.burns(context.layout().material())) {
			return Optional.empty();
		}
		Outline outline = SurveyedOutline.of(heater);
		return WallStrips.of(context.design(), wall).nearest(outline)
				.filter(near -> near.gap().isLessThan(context.length("clear"))) //$NON-NLS-1$
				.or(() -> clearances.nearestStrip(heater, outline));
	}
}
