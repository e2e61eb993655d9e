// SPDX-License-Identifier: EPL-2.0
package wainscribe.rules.paint;

import wainscribe.model.Binder;
import wainscribe.model.Finish;
import wainscribe.model.Surface;
import wainscribe.rules.RuleCheck;
import wainscribe.rules.RuleContext;
import wainscribe.rules.Subject;

/** Finds old trim paint of unknown kind that is to be painted over. */
public final class UnknownOldTrimPaintCheck implements RuleCheck {

	@Override
	public void check(RuleContext context) {
		for (Finish finish : context.room().getFinishes()) {
			boolean unknownTrim = finish.getBinder() == Binder.UNKNOWN && finish.getZone() != null
					&& finish.getZone().getSurface() == Surface.TRIM;
			if (unknownTrim
					&& RoomPaints.of(context).stream().anyMatch(paint -> RoomPaints.meet(finish.getZone(), paint.getZone()))) {
				context.report(Subject.of(finish), Messages.UnknownOldTrimPaintCheck_Trim, Subject.of(finish).element());
			}
		}
	}
}
