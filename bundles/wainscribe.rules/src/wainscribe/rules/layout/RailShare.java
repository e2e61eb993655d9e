// SPDX-License-Identifier: EPL-2.0
package wainscribe.rules.layout;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;

import wainscribe.model.Wall;
import wainscribe.model.length.Length;
import wainscribe.model.outline.WallShape;
import wainscribe.rules.RuleContext;
import wainscribe.rules.Subject;

/**
 * What share of the wall lies below the top of the rail.
 *
 * @param wall   the level wall that is measured, the first of the room
 * @param top    top of the rail
 * @param height height of the wall
 */
record RailShare(Wall wall, Length top, Length height) {

	private static final int DECIMALS = 6;
	private static final BigDecimal HUNDRED = BigDecimal.valueOf(100);

	/** Returns the share in a room; empty without a rail or a level wall of known height. */
	static Optional<RailShare> of(RuleContext context) {
		return context.layout().rail().flatMap(rail -> context.walls().stream().filter(RailShare::isLevel).findFirst()
				.map(wall -> new RailShare(wall, rail.top(), WallShape.of(wall).ceilingLeft())));
	}

	private static boolean isLevel(Wall wall) {
		WallShape shape = WallShape.of(wall);
		return !shape.isFloorSloped() && !shape.isCeilingSloped() && shape.ceilingLeft().signum() > 0;
	}

	/** The rail of the whole room. */
	Subject subject() {
		Subject rail = Subject.rail(wall);
		return new Subject("", rail.element(), rail.id(), rail.object()); //$NON-NLS-1$
	}

	BigDecimal percent() {
		return HUNDRED.multiply(BigDecimal.valueOf(top.units())).divide(BigDecimal.valueOf(height.units()), DECIMALS,
				RoundingMode.HALF_UP);
	}

	String percentShown() {
		return percent().setScale(0, RoundingMode.HALF_UP).toPlainString();
	}
}
