// SPDX-License-Identifier: EPL-2.0
package wainscribe.rules.hazards;

import java.util.EnumSet;
import java.util.Set;

import wainscribe.model.Fixture;
import wainscribe.model.FixtureType;
import wainscribe.model.Wall;
import wainscribe.rules.RuleCheck;
import wainscribe.rules.RuleContext;
import wainscribe.rules.Subject;

/** Finds mirrors, art, shelves and cabinets to be put up that are too heavy for one person. */
public final class HeavyLiftCheck implements RuleCheck {

	private static final Set<FixtureType> LIFTED = EnumSet.of(FixtureType.MIRROR, FixtureType.ART, FixtureType.SHELF,
			FixtureType.CABINET);

	@Override
	public void check(RuleContext context) {
		for (Wall wall : context.walls()) {
			wall.getFixtures().stream()
					.filter(fixture -> LIFTED.contains(fixture.getType()) && fixture.getMass() != null)
					.forEach(fixture -> check(context, fixture));
		}
	}

	private static void check(RuleContext context, Fixture fixture) {
		if (fixture.getMass().inBaseUnit().compareTo(context.number("mass")) > 0) { //$NON-NLS-1$
			context.report(Subject.of(fixture), Messages.HeavyLiftCheck_Heavy, Subject.of(fixture).element(), fixture.getMass(),
					context.number("mass")); //$NON-NLS-1$
		}
	}
}
