// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.elevation.policies;

import wainscribe.layout.FrameOutline;
import wainscribe.model.Wall;
import wainscribe.model.length.Length;
import wainscribe.model.outline.Outline;
import wainscribe.model.outline.WallShape;
import wainscribe.ui.elevation.snapping.EdgeShift;
import wainscribe.ui.elevation.table.FrameKey;

/**
 * How a frame is shifted on its slope: its lower and its upper edge climb as before wherever it goes. For a level frame nothing
 * of this makes a difference.
 *
 * @param wall  the wall
 * @param frame the frame before it is shifted
 */
record Slope(Wall wall, FrameOutline frame) {

	static Slope of(Wall wall, FrameOutline frame) {
		return new Slope(wall, frame);
	}

	/** On a slope a frame is moved along it, or up and down over it, whichever a shift does more. */
	EdgeShift kept(EdgeShift shift) {
		if (!frame.isRaked()) {
			return shift;
		}
		Length along = shift.left().signum() != 0 ? shift.left() : shift.right();
		Length up = shift.bottom().signum() != 0 ? shift.bottom().minus(climb(frame.rise(), along))
				: shift.top().minus(climb(frame.riseTop(), along));
		boolean plumb = shift.bottom().signum() != 0 || shift.top().signum() != 0;
		return plumb && up.abs().isMoreThan(along.abs()) ? shift.plumbOnly() : shift.levelOnly();
	}

	/** Returns the upright rectangle from the lower left corner of the shifted frame. */
	Outline shifted(EdgeShift shift) {
		Outline level = shift.applyTo(FrameKey.outline(frame));
		Length along = level.x0().minus(frame.x());
		Length low = climb(frame.rise(), along);
		Length high = climb(frame.riseTop(), along);
		return new Outline(level.x0(), level.y0().plus(low), level.x1(), level.y1().plus(high).max(level.y0().plus(low)));
	}

	/** Returns how the wall keeps it: over the floor line at the left edge. */
	Outline held(Outline after) {
		Length floor = WallShape.of(wall).floorAt(after.x0());
		return new Outline(after.x0(), after.y0().minus(floor), after.x1(), after.y1().minus(floor));
	}

	/** Returns what it covers with what it climbs. */
	Outline covered(Outline after) {
		Length low = climb(frame.rise(), after.width());
		Length high = climb(frame.riseTop(), after.width());
		return new Outline(after.x0(), after.y0().plus(low.min(Length.ZERO)), after.x1(),
				after.y1().plus(high.max(Length.ZERO)));
	}

	private Length climb(Length rise, Length along) {
		if (rise.signum() == 0 || frame.width().signum() == 0) {
			return Length.ZERO;
		}
		// floating point would not be exact, and the product of two lengths outgrows a long on no wall
		return new Length(Math.floorDiv(Math.multiplyExact(rise.units(), along.units()), frame.width().units()));
	}
}
