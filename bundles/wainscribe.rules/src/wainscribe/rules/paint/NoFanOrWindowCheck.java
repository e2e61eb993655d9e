// SPDX-License-Identifier: EPL-2.0
package wainscribe.rules.paint;

import java.math.BigDecimal;
import java.math.RoundingMode;

import wainscribe.model.Opening;
import wainscribe.model.OpeningKind;
import wainscribe.model.Room;
import wainscribe.rules.RuleCheck;
import wainscribe.rules.RuleContext;
import wainscribe.rules.Subject;
import wainscribe.rules.measure.SurveyedOutline;
import wainscribe.rules.measure.ThingKinds;

/** Finds bathrooms without a fan and without enough window to do instead. */
public final class NoFanOrWindowCheck implements RuleCheck {

	private static final double UNITS_PER_METRE = 8_000_000d;

	@Override
	public void check(RuleContext context) {
		Room room = context.room();
		if (!ThingKinds.isBathroom(room.getUse()) || room.getFan() != null) {
			return;
		}
		double area = room.getWalls().stream().flatMap(wall -> wall.getOpenings().stream())
				.filter(opening -> opening.getKind() == OpeningKind.WINDOW).mapToDouble(NoFanOrWindowCheck::squareMetres).sum();
		BigDecimal wanted = context.number("window"); //$NON-NLS-1$
		if (area < wanted.doubleValue()) {
			context.report(Subject.of(room), Messages.NoFanOrWindowCheck_Room,
					BigDecimal.valueOf(area).setScale(2, RoundingMode.HALF_UP), wanted);
		}
	}

	private static double squareMetres(Opening window) {
		return SurveyedOutline.orZero(window.getWidth()).units() / UNITS_PER_METRE
				* (SurveyedOutline.orZero(window.getHeight()).units() / UNITS_PER_METRE);
	}
}
