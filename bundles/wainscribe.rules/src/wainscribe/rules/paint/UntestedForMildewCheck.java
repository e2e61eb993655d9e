// SPDX-License-Identifier: EPL-2.0
package wainscribe.rules.paint;

import wainscribe.model.Paint;
import wainscribe.rules.RuleCheck;
import wainscribe.rules.RuleContext;
import wainscribe.rules.Subject;
import wainscribe.rules.measure.ThingKinds;

/** Finds paints in bathrooms that are said not to be tested against mildew. */
public final class UntestedForMildewCheck implements RuleCheck {

	@Override
	public void check(RuleContext context) {
		if (!ThingKinds.isBathroom(context.room().getUse())) {
			return;
		}
		for (Paint paint : RoomPaints.of(context)) {
			if (Boolean.FALSE.equals(paint.getMildew())) {
				context.report(Subject.of(paint), Messages.UntestedForMildewCheck_Untested, Subject.of(paint).element());
			}
		}
	}
}
