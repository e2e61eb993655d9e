// SPDX-License-Identifier: EPL-2.0
package wainscribe.rules.paint;

import java.util.EnumSet;
import java.util.Set;

import wainscribe.model.Material;
import wainscribe.model.Paint;
import wainscribe.model.Primer;
import wainscribe.model.Surface;
import wainscribe.rules.RuleCheck;
import wainscribe.rules.RuleContext;
import wainscribe.rules.Subject;

/** Finds paints for fibreboard mouldings without a primer, so that nothing seals the cut edges. */
public final class UnsealedBoardEdgeCheck implements RuleCheck {

	private static final Set<Material> BOARD = EnumSet.of(Material.MDF, Material.MR_MDF);

	@Override
	public void check(RuleContext context) {
		boolean trimmed = context.layout().rail().isPresent() || context.layout().members().findAny().isPresent();
		if (!trimmed || !BOARD.contains(context.layout().material())) {
			return;
		}
		for (Paint paint : RoomPaints.of(context)) {
			if (RoomPaints.surface(paint) == Surface.TRIM && paint.getPrimer() != Primer.BONDING) {
				check(context, paint);
			}
		}
	}

	private static void check(RuleContext context, Paint paint) {
		Subject subject = Subject.of(paint);
		if (paint.getPrimer() == Primer.UNRECORDED) {
			context.ask(subject, Messages.UnsealedBoardEdgeCheck_Ask, subject.element());
		} else {
			context.report(subject, Messages.UnsealedBoardEdgeCheck_Unsealed, subject.element());
		}
	}
}
