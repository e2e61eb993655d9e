// SPDX-License-Identifier: EPL-2.0
package wainscribe.rules.heat;

import wainscribe.layout.MouldingSection;
import wainscribe.model.Material;
import wainscribe.model.length.Length;
import wainscribe.rules.RuleCheck;
import wainscribe.rules.RuleContext;
import wainscribe.rules.Subject;

/** Finds mouldings of foam plastic that are thicker or wider than may be left exposed. */
public final class LargeFoamTrimCheck implements RuleCheck {

	@Override
	public void check(RuleContext context) {
		if (context.layout().material() != Material.POLYURETHANE) {
			return;
		}
		boolean framed = context.layout().members().findAny().isPresent();
		boolean railed = context.layout().rail().isPresent();
		if (framed && isLarge(context, context.layout().profile())) {
			report(context, context.layout().profile());
		} else if (railed && isLarge(context, context.design().brief().rail())) {
			report(context, context.design().brief().rail());
		}
	}

	private static boolean isLarge(RuleContext context, MouldingSection section) {
		return section.thickness().isMoreThan(context.length("thickness")) //$NON-NLS-1$
				|| section.face().isMoreThan(context.length("width")); //$NON-NLS-1$
	}

	private static void report(RuleContext context, MouldingSection section) {
		Length thickness = context.length("thickness"); //$NON-NLS-1$
		context.report(Subject.of(context.room()), Messages.LargeFoamTrimCheck_Room, section.face(), section.thickness(),
				context.length("width"), thickness); //$NON-NLS-1$
	}
}
