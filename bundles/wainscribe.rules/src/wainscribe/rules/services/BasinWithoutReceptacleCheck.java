// SPDX-License-Identifier: EPL-2.0
package wainscribe.rules.services;

import java.util.List;

import wainscribe.model.Box;
import wainscribe.model.BoxType;
import wainscribe.model.Fixture;
import wainscribe.model.FixtureType;
import wainscribe.model.RoomUse;
import wainscribe.model.Wall;
import wainscribe.model.length.Length;
import wainscribe.rules.RuleCheck;
import wainscribe.rules.RuleContext;
import wainscribe.rules.Subject;
import wainscribe.rules.measure.Clearances;
import wainscribe.rules.measure.SurveyedOutline;
import wainscribe.rules.measure.ThingKinds;

/** Finds bathroom basins without a receptacle in reach. A basin that was surveyed on its vanity counts once. */
public final class BasinWithoutReceptacleCheck implements RuleCheck {

	@Override
	public void check(RuleContext context) {
		RoomUse use = context.room().getUse();
		if (!ThingKinds.isBathroom(use) && use != RoomUse.POWDER_ROOM) {
			return;
		}
		Clearances clearances = new Clearances(context.design());
		List<Box> receptacles = context.walls().stream().flatMap(wall -> wall.getBoxes().stream())
				.filter(box -> box.getType() == BoxType.RECEPTACLE).toList();
		for (Wall wall : context.walls()) {
			wall.getFixtures().stream().filter(fixture -> ThingKinds.isBasin(fixture) && !carriesBasin(wall, fixture))
					.forEach(basin -> check(context, clearances, receptacles, basin));
		}
	}

	private static void check(RuleContext context, Clearances clearances, List<Box> receptacles, Fixture basin) {
		Length reach = context.length("reach"); //$NON-NLS-1$
		Subject subject = Subject.of(basin);
		Length nearest = receptacles.stream().map(box -> clearances.between(basin, box)).min(Length::compareTo).orElse(null);
		if (nearest == null) {
			context.report(subject, Messages.BasinWithoutReceptacleCheck_None, subject.element(), reach);
		} else if (nearest.isMoreThan(reach)) {
			context.report(subject, Messages.BasinWithoutReceptacleCheck_Far, subject.element(), nearest, reach);
		}
	}

	private static boolean carriesBasin(Wall wall, Fixture vanity) {
		return vanity.getType() == FixtureType.VANITY && wall.getFixtures().stream()
				.anyMatch(other -> other != vanity && ThingKinds.isBasin(other) && other.getType() != FixtureType.VANITY
						&& SurveyedOutline.of(other).clearX(SurveyedOutline.of(vanity)).signum() == 0);
	}
}
