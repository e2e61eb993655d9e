// SPDX-License-Identifier: EPL-2.0
package wainscribe.rules.paint;

import java.math.BigDecimal;
import java.math.RoundingMode;

import wainscribe.model.FanMode;
import wainscribe.model.FanOutlet;
import wainscribe.model.Room;
import wainscribe.model.measure.MeasureUnit;
import wainscribe.rules.RuleCheck;
import wainscribe.rules.RuleContext;
import wainscribe.rules.Subject;
import wainscribe.rules.measure.ThingKinds;

/** Finds bathrooms whose exhaust fan moves too little air for the way it runs. */
public final class WeakFanCheck implements RuleCheck {

	@Override
	public void check(RuleContext context) {
		Room room = context.room();
		if (!ThingKinds.isBathroom(room.getUse()) || room.getFan() == null || room.getFanOutlet() == FanOutlet.NONE) {
			return;
		}
		BigDecimal flow = room.getFan().inBaseUnit();
		boolean continuous = room.getFanMode() == FanMode.CONTINUOUS;
		BigDecimal wanted = wanted(context, continuous ? "continuous" : "demand"); //$NON-NLS-1$ //$NON-NLS-2$
		if (flow.compareTo(wanted) >= 0) {
			return;
		}
		Subject subject = Subject.of(room);
		boolean enoughIfContinuous = flow.compareTo(wanted(context, "continuous")) >= 0; //$NON-NLS-1$
		if (room.getFanMode() == FanMode.UNRECORDED && enoughIfContinuous) {
			context.ask(subject, Messages.WeakFanCheck_Ask, room.getFan(), shown(context, wanted));
		} else {
			context.report(subject, continuous ? Messages.WeakFanCheck_Continuous : Messages.WeakFanCheck_Demand, room.getFan(),
					shown(context, wanted));
		}
	}

	/** The figure in litres a second; the rule gives it in the unit of its code, so that the round figure passes exactly. */
	private static BigDecimal wanted(RuleContext context, String mode) {
		boolean cubicFeet = context.number("cfm").signum() != 0; //$NON-NLS-1$
		BigDecimal figure = context.number(mode);
		return cubicFeet ? MeasureUnit.CUBIC_FEET_PER_MINUTE.toBase(figure) : figure;
	}

	private static String shown(RuleContext context, BigDecimal litres) {
		boolean cubicFeet = context.number("cfm").signum() != 0; //$NON-NLS-1$
		BigDecimal each = MeasureUnit.CUBIC_FEET_PER_MINUTE.toBase(BigDecimal.ONE);
		return cubicFeet ? litres.divide(each, 0, RoundingMode.HALF_UP).toPlainString() + "cfm" //$NON-NLS-1$
				: litres.toPlainString() + "l/s"; //$NON-NLS-1$
	}
}
