// SPDX-License-Identifier: EPL-2.0
package wainscribe.rules.paint;

import wainscribe.model.Paint;
import wainscribe.model.RoomUse;
import wainscribe.model.Surface;
import wainscribe.rules.RuleCheck;
import wainscribe.rules.RuleContext;
import wainscribe.rules.Subject;
import wainscribe.rules.measure.ThingKinds;

/** Finds paints on the walls of baths and kitchens that would wear when they are washed. */
public final class WeakPaintInWetRoomCheck implements RuleCheck {

	@Override
	public void check(RuleContext context) {
		RoomUse use = context.room().getUse();
		if (!ThingKinds.isBathroom(use) && use != RoomUse.KITCHEN) {
			return;
		}
		int most = context.number("class").intValueExact(); //$NON-NLS-1$
		for (Paint paint : RoomPaints.of(context)) {
			boolean washed = RoomPaints.surface(paint) != Surface.CEILING && RoomPaints.surface(paint) != Surface.FLOOR;
			if (washed && paint.getScrub() != null && paint.getScrub() > most) {
				context.report(Subject.of(paint), Messages.WeakPaintInWetRoomCheck_Scrub, Subject.of(paint).element(),
						paint.getScrub(), most);
			}
		}
	}
}
