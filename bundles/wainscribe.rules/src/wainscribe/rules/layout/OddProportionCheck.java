// SPDX-License-Identifier: EPL-2.0
package wainscribe.rules.layout;

import java.math.BigDecimal;

import wainscribe.layout.FrameOutline;
import wainscribe.model.length.Length;
import wainscribe.rules.RuleCheck;
import wainscribe.rules.RuleContext;
import wainscribe.rules.Subject;
import wainscribe.rules.measure.FrameRow;

/**
 * Finds runs whose frames are too long and narrow, or nearly square by accident. Says so once a run, on its first such frame;
 * squares that the brief asks for by its frame widths are meant.
 */
public final class OddProportionCheck implements RuleCheck {

	@Override
	public void check(RuleContext context) {
		for (FrameRow row : FrameRow.of(context.design())) {
			for (FrameOutline frame : row.frames()) {
				if (reported(context, row, frame)) {
					break;
				}
			}
		}
	}

	private static boolean reported(RuleContext context, FrameRow row, FrameOutline frame) {
		Length longer = frame.width().max(frame.height());
		Length shorter = frame.width().min(frame.height());
		if (exceeds(longer, shorter, context.number("ratio"))) { //$NON-NLS-1$
			context.report(Subject.of(row.wall(), frame), Messages.OddProportionCheck_Long, frame.id(), frame.width(),
					frame.height(), context.number("ratio")); //$NON-NLS-1$
			return true;
		}
		if (!longer.equals(shorter) && !exceeds(longer, shorter, context.number("square")) && !isMeant(context, frame)) { //$NON-NLS-1$
			context.report(Subject.of(row.wall(), frame), Messages.OddProportionCheck_Square, frame.id(), frame.width(),
					frame.height());
			return true;
		}
		return false;
	}

	private static boolean exceeds(Length longer, Length shorter, BigDecimal ratio) {
		return BigDecimal.valueOf(longer.units()).compareTo(BigDecimal.valueOf(shorter.units()).multiply(ratio)) > 0;
	}

	private static boolean isMeant(RuleContext context, FrameOutline frame) {
		Length least = context.design().brief().widthMin();
		Length most = context.design().brief().widthMax();
		return least != null && most != null && !frame.width().isLessThan(least) && !frame.width().isMoreThan(most);
	}
}
