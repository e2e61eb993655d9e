// SPDX-License-Identifier: EPL-2.0
package wainscribe.rules.services;

import java.util.List;
import java.util.Optional;

import wainscribe.model.Box;
import wainscribe.model.BoxType;
import wainscribe.model.Fixture;
import wainscribe.model.FixtureType;
import wainscribe.model.Wall;
import wainscribe.model.length.Length;
import wainscribe.rules.RuleCheck;
import wainscribe.rules.RuleContext;
import wainscribe.rules.Subject;
import wainscribe.rules.measure.Clearances;
import wainscribe.rules.measure.SurveyedOutline;
import wainscribe.rules.measure.ThingKinds;

/** Finds receptacles in the zone round a tub or shower where none may be. Shaver units have rules of their own. */
public final class ReceptacleByTubCheck implements RuleCheck {

	@Override
	public void check(RuleContext context) {
		Clearances clearances = new Clearances(context.design());
		List<Fixture> bathing = context.walls().stream().flatMap(wall -> wall.getFixtures().stream())
				.filter(ThingKinds::isBathing).toList();
		for (Wall wall : context.walls()) {
			wall.getBoxes().stream()
					.filter(box -> box.getType() == BoxType.RECEPTACLE && !Boolean.TRUE.equals(box.getShaver()))
					.forEach(box -> check(context, clearances, bathing, box));
		}
	}

	private static void check(RuleContext context, Clearances clearances, List<Fixture> bathing, Box box) {
		Length away = context.length("away"); //$NON-NLS-1$
		Optional<Fixture> near = bathing.stream().filter(fixture -> clearances.overFloor(box, fixture).isLessThan(away)
				&& isInHeight(context, box, fixture)).findFirst();
		Subject subject = Subject.of(box);
		near.ifPresent(fixture -> context.report(subject, Messages.ReceptacleByTubCheck_Near, subject.element(),
				clearances.overFloor(box, fixture), Subject.of(fixture).element(), away));
	}

	/** The zone of a tub reaches up from its rim; a shower is measured from the floor it stands on. */
	private static boolean isInHeight(RuleContext context, Box box, Fixture fixture) {
		Length above = context.length("above"); //$NON-NLS-1$
		boolean tub = fixture.getType() == FixtureType.TUB;
		Length from = tub ? SurveyedOutline.of(fixture).y1() : SurveyedOutline.of(fixture).y0();
		return !SurveyedOutline.of(box).y0().isMoreThan(from.plus(above));
	}
}
