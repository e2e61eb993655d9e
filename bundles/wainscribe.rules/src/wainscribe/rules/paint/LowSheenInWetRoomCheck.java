// SPDX-License-Identifier: EPL-2.0
package wainscribe.rules.paint;

import java.util.EnumSet;
import java.util.Set;

import wainscribe.model.GlossLevel;
import wainscribe.model.Paint;
import wainscribe.model.RoomUse;
import wainscribe.model.Surface;
import wainscribe.rules.RuleCheck;
import wainscribe.rules.RuleContext;
import wainscribe.rules.Subject;
import wainscribe.rules.measure.ThingKinds;

/** Finds paints too flat to wash on the walls and trim of baths and kitchens. */
public final class LowSheenInWetRoomCheck implements RuleCheck {

	private static final Set<Surface> WASHED = EnumSet.of(Surface.WALLS, Surface.TRIM, Surface.LOWER, Surface.UPPER);

	@Override
	public void check(RuleContext context) {
		RoomUse use = context.room().getUse();
		if (ThingKinds.isBathroom(use) || use == RoomUse.KITCHEN) {
			RoomPaints.of(context).stream().filter(paint -> WASHED.contains(RoomPaints.surface(paint)))
					.forEach(paint -> check(context, paint));
		}
	}

	private static void check(RuleContext context, Paint paint) {
		GlossLevel least = GlossLevel.get(context.number("level").intValueExact()); //$NON-NLS-1$
		Subject subject = Subject.of(paint);
		if (paint.getGloss() == GlossLevel.UNRECORDED) {
			context.ask(subject, Messages.LowSheenInWetRoomCheck_Ask, subject.element(), least.getLiteral());
		} else if (paint.getGloss().getValue() < least.getValue()) {
			context.report(subject, Messages.LowSheenInWetRoomCheck_Flat, subject.element(), paint.getGloss().getLiteral(),
					least.getLiteral());
		}
	}
}
