// SPDX-License-Identifier: EPL-2.0
package wainscribe.rules.trim;

import java.math.BigDecimal;
import java.util.EnumSet;
import java.util.Set;

import wainscribe.model.Material;
import wainscribe.rules.RuleCheck;
import wainscribe.rules.RuleContext;
import wainscribe.rules.Subject;

/** Finds rooms too dry or too damp for mouldings of wood or fibreboard. */
public final class DryOrDampRoomCheck implements RuleCheck {

	private static final Set<Material> MOVING = EnumSet.of(Material.MDF, Material.MR_MDF, Material.PINE, Material.POPLAR);

	@Override
	public void check(RuleContext context) {
		boolean trimmed = context.layout().rail().isPresent() || context.layout().members().findAny().isPresent();
		if (!trimmed || context.room().getHumidity() == null || !MOVING.contains(context.layout().material())) {
			return;
		}
		BigDecimal humidity = context.room().getHumidity().inBaseUnit();
		if (humidity.compareTo(context.number("least")) < 0 || humidity.compareTo(context.number("most")) > 0) { //$NON-NLS-1$ //$NON-NLS-2$
			context.report(Subject.of(context.room()), Messages.DryOrDampRoomCheck_Room, humidity.toPlainString(),
					context.number("least"), context.number("most")); //$NON-NLS-1$ //$NON-NLS-2$
		}
	}
}
