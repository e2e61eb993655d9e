// SPDX-License-Identifier: EPL-2.0
package wainscribe.takeoff;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Optional;

import wainscribe.model.Paint;

/**
 * The area that a paint takes in one room.
 *
 * @param room     name of the room
 * @param paint    the paint decided
 * @param area     square metres of surface, openings deducted; null where it cannot be found
 * @param formula  how the area was found, or why it cannot be
 * @param mould    square metres of new moulding that the paint takes as well
 * @param textured whether the surface is rough
 * @param primed   square metres that are primed first
 */
record PaintZone(String room, Paint paint, BigDecimal area, String formula, BigDecimal mould, boolean textured,
		BigDecimal primed) {

	int coats() {
		return paint.getCoats() == null ? Practice.COATS : paint.getCoats();
	}

	/** Returns what a litre covers in square metres. */
	BigDecimal spread() {
		return textured ? Practice.FINISH_SPREAD.multiply(Practice.TEXTURE) : Practice.FINISH_SPREAD;
	}

	/** Returns what others may know of this zone. */
	PaintArea on(String wall) {
		boolean known = area != null;
		return new PaintArea(paint, RoomPaints.surface(paint), wall, Optional.ofNullable(area).map(a -> a.add(mould)), formula, coats(),
				known ? Optional.of(litres()) : Optional.empty());
	}

	BigDecimal painted() {
		return area.add(mould);
	}

	BigDecimal litres() {
		return litres(painted(), coats(), spread());
	}

	/** Returns area times coats by spreading rate. */
	static BigDecimal litres(BigDecimal area, int coats, BigDecimal spread) {
		return area.multiply(BigDecimal.valueOf(coats)).divide(spread, MathContext.DECIMAL64);
	}
}
