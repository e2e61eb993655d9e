// SPDX-License-Identifier: EPL-2.0
package wainscribe.rules.paint;

import wainscribe.model.measure.Measure;
import wainscribe.rules.RuleCheck;
import wainscribe.rules.RuleContext;
import wainscribe.rules.Subject;

/** Finds rooms whose air is damper than a home wants to be. */
public final class DampRoomCheck implements RuleCheck {

	@Override
	public void check(RuleContext context) {
		Measure humidity = context.room().getHumidity();
		if (humidity != null && humidity.inBaseUnit().compareTo(context.number("most")) >= 0) { //$NON-NLS-1$
			context.report(Subject.of(context.room()), Messages.DampRoomCheck_Room, PaintingAir.shown(humidity.inBaseUnit()),
					context.number("most")); //$NON-NLS-1$
		}
	}
}
