// SPDX-License-Identifier: EPL-2.0
package wainscribe.rules.layout;

import java.util.EnumSet;
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
import wainscribe.rules.measure.SurveyedOutline;
import wainscribe.rules.measure.ThingKinds;
import wainscribe.rules.measure.WallStrips;
import wainscribe.rules.measure.WallStrips.Nearest;

/** Finds air grilles with moulding, a shelf or art over them or too near to take them off. */
public final class GrilleCrowdedCheck implements RuleCheck {

	private static final Set<FixtureType> COVERING = EnumSet.of(FixtureType.SHELF, FixtureType.ART, FixtureType.MIRROR);

	@Override
	public void check(RuleContext context) {
		for (Wall wall : context.walls()) {
			WallStrips strips = WallStrips.of(context.design(), wall);
			wall.getFixtures().stream().filter(ThingKinds::isAirGrille)
					.forEach(grille -> check(context, wall, strips, grille));
		}
	}

	private static void check(RuleContext context, Wall wall, WallStrips strips, Fixture grille) {
		Length clear = context.length("clear"); //$NON-NLS-1$
		Outline outline = SurveyedOutline.of(grille);
		Subject subject = Subject.of(grille);
		Optional<Nearest> near = strips.nearest(outline).filter(nearest -> nearest.gap().isLessThan(clear));
		Optional<Fixture> cover = wall.getFixtures().stream().filter(fixture -> COVERING.contains(fixture.getType()))
				.filter(fixture -> SurveyedOutline.covered(context.design(), fixture).overlaps(outline.grown(clear))).findFirst();
		if (near.isPresent()) {
			context.report(subject, Messages.GrilleCrowdedCheck_Moulding, subject.element(), near.get().strip().name(),
					near.get().gap(), clear);
		} else if (cover.isPresent()) {
			context.report(subject, Messages.GrilleCrowdedCheck_Covered, subject.element(),
					Subject.of(cover.get()).element(), clear);
		}
	}
}
