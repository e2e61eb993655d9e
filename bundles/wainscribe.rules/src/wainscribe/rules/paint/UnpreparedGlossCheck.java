// SPDX-License-Identifier: EPL-2.0
package wainscribe.rules.paint;

import java.util.Optional;

import wainscribe.model.Finish;
import wainscribe.model.Paint;
import wainscribe.model.Primer;
import wainscribe.rules.RuleCheck;
import wainscribe.rules.RuleContext;
import wainscribe.rules.Subject;

/** Finds paints that would go on an old glossy coat without cleaning, dulling and a bonding primer. */
public final class UnpreparedGlossCheck implements RuleCheck {

	@Override
	public void check(RuleContext context) {
		for (Paint paint : RoomPaints.of(context)) {
			Optional<Finish> glossy = context.room().getFinishes().stream()
					.filter(finish -> isGlossy(context, finish) && RoomPaints.meet(finish.getZone(), paint.getZone())).findFirst();
			glossy.ifPresent(finish -> check(context, paint, finish));
		}
	}

	private static void check(RuleContext context, Paint paint, Finish finish) {
		boolean prepared = Boolean.TRUE.equals(paint.getClean()) && Boolean.TRUE.equals(paint.getDegloss())
				&& paint.getPrimer() == Primer.BONDING;
		if (!prepared) {
			context.report(Subject.of(paint), Messages.UnpreparedGlossCheck_Gloss, Subject.of(paint).element(),
					Subject.of(finish).element(), finish.getGloss().getLiteral());
		}
	}

	private static boolean isGlossy(RuleContext context, Finish finish) {
		return finish.getGloss().getValue() >= context.number("level").intValueExact(); //$NON-NLS-1$
	}
}
