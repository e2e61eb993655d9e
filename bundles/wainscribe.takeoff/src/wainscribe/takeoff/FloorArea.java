// SPDX-License-Identifier: EPL-2.0
package wainscribe.takeoff;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;

import wainscribe.model.Room;
import wainscribe.model.Wall;
import wainscribe.model.outline.CornerAngle;

/** The area inside the walls of a room, walked round by their lengths and corner angles. */
public final class FloorArea {

	private static final int LEAST_CLOSED = 3;
	private static final int PLACES = 4;

	private FloorArea() {
	}

	/**
	 * Returns the area in square metres.
	 *
	 * @return empty where the walls do not close, so that the area has to be measured
	 */
	public static Optional<BigDecimal> of(Room room) {
		if (Boolean.TRUE.equals(room.getOpen()) || room.getWalls().size() < LEAST_CLOSED) {
			return Optional.empty();
		}
		double x = 0;
		double y = 0;
		double heading = 0;
		double twice = 0;
		for (Wall wall : room.getWalls()) {
			double length = Amounts.metres(wall.getLength()).doubleValue();
			double nextX = x + length * Math.cos(heading);
			double nextY = y + length * Math.sin(heading);
			twice += x * nextY - nextX * y;
			x = nextX;
			y = nextY;
			// Walking clockwise, each corner turns to the right by what the inside angle leaves of a straight line.
			heading -= Math.toRadians(180 - CornerAngle.of(wall).doubleValue());
		}
		return Optional.of(BigDecimal.valueOf(Math.abs(twice) / 2).setScale(PLACES, RoundingMode.HALF_UP));
	}
}
