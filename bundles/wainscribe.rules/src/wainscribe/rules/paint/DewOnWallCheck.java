// SPDX-License-Identifier: EPL-2.0
package wainscribe.rules.paint;

import java.math.BigDecimal;

import wainscribe.model.Room;
import wainscribe.rules.RuleCheck;
import wainscribe.rules.RuleContext;
import wainscribe.rules.Subject;

/** Finds rooms whose walls are so near the dew point that moisture could settle under the paint. */
public final class DewOnWallCheck implements RuleCheck {

	@Override
	public void check(RuleContext context) {
		Room room = context.room();
		boolean measured = room.getAir() != null && room.getHumidity() != null && room.getSurfaceTemperature() != null
				&& room.getHumidity().inBaseUnit().signum() > 0;
		if (!measured || !PaintingAir.isPainted(context)) {
			return;
		}
		BigDecimal dew = PaintingAir.dewPoint(room.getAir().inBaseUnit(), room.getHumidity().inBaseUnit());
		BigDecimal surface = room.getSurfaceTemperature().inBaseUnit();
		BigDecimal margin = context.number("margin"); //$NON-NLS-1$
		if (surface.subtract(dew).compareTo(margin) < 0) {
			context.report(Subject.of(room), Messages.DewOnWallCheck_Room, PaintingAir.shown(surface), PaintingAir.shown(dew),
					margin);
		}
	}
}
