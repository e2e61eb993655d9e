// SPDX-License-Identifier: EPL-2.0
package wainscribe.takeoff;

import java.math.BigDecimal;

import wainscribe.model.ExistingTrim;
import wainscribe.model.Opening;
import wainscribe.model.OpeningKind;
import wainscribe.model.Paint;
import wainscribe.model.Room;
import wainscribe.model.Wall;
import wainscribe.model.length.Length;

/** Painted area of the mouldings that stay, in square metres: length by face and projection. */
record ExistingTrimArea(Paint paint) {

	/** Returns the area of the existing mouldings that stay. */
	BigDecimal kept(Room room) {
		BigDecimal sum = BigDecimal.ZERO;
		for (Wall wall : room.getWalls()) {
			for (ExistingTrim trim : wall.getTrims()) {
				if (!Boolean.FALSE.equals(trim.getKeep()) && RoomPaints.covers(paint, wall.getName())) {
					sum = sum.add(WallAreas.area(length(wall, trim), or(trim.getHeight()).plus(or(trim.getDepth()))));
				}
			}
		}
		return sum;
	}

	/** Returns the area of the casings, at doors three sides, at windows four. */
	BigDecimal casings(Room room) {
		BigDecimal sum = BigDecimal.ZERO;
		for (Wall wall : room.getWalls()) {
			for (Opening opening : wall.getOpenings()) {
				if (RoomPaints.covers(paint, wall.getName()) && or(opening.getCasing()).signum() > 0) {
					sum = sum.add(WallAreas.area(casingLength(opening), or(opening.getCasing()).plus(or(opening.getCasingDepth()))));
				}
			}
		}
		return sum;
	}

	static Length casingLength(Opening opening) {
		int acrosses = opening.getKind() == OpeningKind.WINDOW ? 2 : 1;
		return or(opening.getHeight()).times(2).plus(or(opening.getWidth()).times(acrosses));
	}

	private static Length length(Wall wall, ExistingTrim trim) {
		return trim.getWidth() == null ? or(wall.getLength()).minus(or(trim.getX())).max(Length.ZERO) : trim.getWidth();
	}

	private static Length or(Length length) {
		return length == null ? Length.ZERO : length;
	}
}
