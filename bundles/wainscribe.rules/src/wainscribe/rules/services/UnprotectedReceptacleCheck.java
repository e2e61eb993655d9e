// SPDX-License-Identifier: EPL-2.0
package wainscribe.rules.services;

import java.util.List;
import java.util.Optional;

import wainscribe.model.Box;
import wainscribe.model.BoxType;
import wainscribe.model.Fixture;
import wainscribe.model.RoomUse;
import wainscribe.model.Wall;
import wainscribe.model.length.Length;
import wainscribe.rules.RuleCheck;
import wainscribe.rules.RuleContext;
import wainscribe.rules.Subject;
import wainscribe.rules.measure.Clearances;
import wainscribe.rules.measure.ThingKinds;

/** Finds receptacles in bathrooms, or near a sink, tub or shower, without known ground-fault protection. */
public final class UnprotectedReceptacleCheck implements RuleCheck {

	@Override
	public void check(RuleContext context) {
		Clearances clearances = new Clearances(context.design());
		List<Fixture> wet = context.walls().stream().flatMap(wall -> wall.getFixtures().stream()).filter(ThingKinds::isWet)
				.toList();
		for (Wall wall : context.walls()) {
			wall.getBoxes().stream().filter(UnprotectedReceptacleCheck::isUnprotected)
					.forEach(box -> check(context, clearances, wet, box));
		}
	}

	private static void check(RuleContext context, Clearances clearances, List<Fixture> wet, Box box) {
		Length within = context.length("within"); //$NON-NLS-1$
		RoomUse use = context.room().getUse();
		boolean bath = ThingKinds.isBathroom(use) || use == RoomUse.POWDER_ROOM;
		Optional<Fixture> near = wet.stream().filter(fixture -> !clearances.between(box, fixture).isMoreThan(within)).findFirst();
		if (!bath && near.isEmpty()) {
			return;
		}
		Subject subject = Subject.of(box);
		String where = near.map(fixture -> context.say(Messages.UnprotectedReceptacleCheck_Near,
				clearances.between(box, fixture), Subject.of(fixture).element())).orElse(Messages.UnprotectedReceptacleCheck_Bath);
		if (box.getGfci() == null) {
			context.ask(subject, Messages.UnprotectedReceptacleCheck_Ask, subject.element(), where);
		} else {
			context.report(subject, Messages.UnprotectedReceptacleCheck_Without, subject.element(), where);
		}
	}

	private static boolean isUnprotected(Box box) {
		return box.getType() == BoxType.RECEPTACLE && !Boolean.TRUE.equals(box.getGfci())
				&& !Boolean.TRUE.equals(box.getShaver());
	}
}
