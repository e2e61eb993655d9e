// SPDX-License-Identifier: EPL-2.0
package wainscribe.rules.paint;

import java.math.BigDecimal;
import java.util.Objects;
import java.util.stream.Stream;

import wainscribe.model.Room;
import wainscribe.model.measure.Measure;
import wainscribe.rules.RuleCheck;
import wainscribe.rules.RuleContext;
import wainscribe.rules.Subject;

/** Finds rooms whose air or walls are too cold to paint. */
public final class ColdForPaintCheck implements RuleCheck {

	@Override
	public void check(RuleContext context) {
		Room room = context.room();
		BigDecimal least = context.number("least"); //$NON-NLS-1$
		if (PaintingAir.isPainted(context)) {
			Stream.of(room.getAir(), room.getSurfaceTemperature()).filter(Objects::nonNull).map(Measure::inBaseUnit)
					.min(BigDecimal::compareTo).filter(coldest -> coldest.compareTo(least) < 0)
					.ifPresent(coldest -> context.report(Subject.of(room), Messages.ColdForPaintCheck_Room,
							PaintingAir.shown(coldest), least));
		}
	}
}
