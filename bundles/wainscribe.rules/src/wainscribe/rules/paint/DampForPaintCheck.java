// SPDX-License-Identifier: EPL-2.0
package wainscribe.rules.paint;

import java.math.BigDecimal;

import wainscribe.model.measure.Measure;
import wainscribe.rules.RuleCheck;
import wainscribe.rules.RuleContext;
import wainscribe.rules.Subject;

/** Finds rooms whose air is too damp to paint. */
public final class DampForPaintCheck implements RuleCheck {

	@Override
	public void check(RuleContext context) {
		Measure humidity = context.room().getHumidity();
		BigDecimal most = context.number("most"); //$NON-NLS-1$
		if (PaintingAir.isPainted(context) && humidity != null && humidity.inBaseUnit().compareTo(most) > 0) {
			context.report(Subject.of(context.room()), Messages.DampForPaintCheck_Room,
					PaintingAir.shown(humidity.inBaseUnit()), most);
		}
	}
}
