// SPDX-License-Identifier: EPL-2.0
package wainscribe.rules.layout;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;

import wainscribe.model.Wall;
import wainscribe.model.outline.CornerAngle;
import wainscribe.rules.RuleCheck;
import wainscribe.rules.RuleContext;
import wainscribe.rules.Subject;
import wainscribe.rules.measure.WallStrips;

/** Finds corners that a mitre cut for a square corner would not close, and says how to set the saw. */
public final class OutOfSquareCornerCheck implements RuleCheck {

	private static final int CLOSES_FROM = 3;
	private static final BigDecimal TWO = BigDecimal.valueOf(2);
	private static final List<BigDecimal> SQUARE = List.of(BigDecimal.valueOf(90), BigDecimal.valueOf(270));
	private static final BigDecimal STRAIGHT = BigDecimal.valueOf(180);

	@Override
	public void check(RuleContext context) {
		List<Wall> walls = context.walls();
		boolean closes = walls.size() >= CLOSES_FROM && !Boolean.TRUE.equals(context.room().getOpen());
		for (int i = 0; i < (closes ? walls.size() : walls.size() - 1); i++) {
			Wall next = walls.get((i + 1) % walls.size());
			boolean trimmed = !WallStrips.of(context.design(), walls.get(i)).isEmpty()
					&& !WallStrips.of(context.design(), next).isEmpty();
			if (trimmed) {
				check(context, walls.get(i), next);
			}
		}
	}

	private static void check(RuleContext context, Wall wall, Wall next) {
		BigDecimal angle = CornerAngle.of(wall);
		BigDecimal tolerance = context.number("degrees"); //$NON-NLS-1$
		boolean square = SQUARE.stream().anyMatch(right -> right.subtract(angle).abs().compareTo(tolerance) <= 0);
		boolean straight = STRAIGHT.subtract(angle).abs().compareTo(tolerance) <= 0;
		if (!square && !straight) {
			BigDecimal inside = angle.min(BigDecimal.valueOf(360).subtract(angle));
			BigDecimal saw = SQUARE.getFirst().subtract(inside.divide(TWO));
			context.report(Subject.of(wall), Messages.OutOfSquareCornerCheck_Corner, wall.getName(), next.getName(),
					degrees(angle), degrees(saw));
		}
	}

	private static String degrees(BigDecimal angle) {
		BigDecimal rounded = angle.setScale(1, RoundingMode.HALF_UP);
		return (rounded.stripTrailingZeros().scale() <= 0 ? rounded.setScale(0) : rounded).toPlainString();
	}
}
