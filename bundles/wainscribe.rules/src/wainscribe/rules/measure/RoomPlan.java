// SPDX-License-Identifier: EPL-2.0
package wainscribe.rules.measure;

import java.util.ArrayList;
import java.util.List;

import wainscribe.model.Placed;
import wainscribe.model.Room;
import wainscribe.model.Wall;
import wainscribe.model.length.Length;
import wainscribe.model.outline.CornerAngle;
import wainscribe.model.outline.Outline;

/**
 * The room seen from above, walked round from the lengths of its walls and the angles between them, so that things on
 * different walls can be measured against each other. Square corners keep distances exact; other angles are rounded to
 * 1/8000 mm.
 */
public final class RoomPlan {

	private static final int RIGHT_ANGLE = 90;
	private static final int FULL_TURN = 360;

	private final List<Side> sides = new ArrayList<>();

	/** Where a wall stands: its left end and the directions along it and into the room. */
	private record Side(Wall wall, double x, double y, double cos, double sin) {

		double[] at(double along, double out) {
			return new double[] { x + along * cos + out * sin, y + along * sin - out * cos };
		}
	}

	/** Draws the plan of a room. */
	public RoomPlan(Room room) {
		double x = 0;
		double y = 0;
		double heading = 0;
		for (Wall wall : room.getWalls()) {
			double cos = cosine(heading);
			double sin = cosine(heading - RIGHT_ANGLE);
			sides.add(new Side(wall, x, y, cos, sin));
			double length = SurveyedOutline.orZero(wall.getLength()).units();
			x += length * cos;
			y += length * sin;
			heading -= 2 * RIGHT_ANGLE - CornerAngle.of(wall).doubleValue();
		}
	}

	/** Returns the floor that a surveyed thing takes: its width, out to its depth; a line at the wall if it has none. */
	public PlanShape of(Placed placed) {
		Outline outline = SurveyedOutline.of(placed);
		return of((Wall) placed.eContainer(), outline.x0(), outline.x1(), SurveyedOutline.orZero(placed.getDepth()));
	}

	/** Returns a part of a wall, out to a depth. */
	public PlanShape of(Wall wall, Length x0, Length x1, Length depth) {
		return of(wall, x0, x1, Length.ZERO, depth);
	}

	/** Returns a part of the floor before a wall. */
	public PlanShape of(Wall wall, Length x0, Length x1, Length near, Length far) {
		Side side = sides.stream().filter(candidate -> candidate.wall == wall).findFirst()
				.orElseThrow(() -> new IllegalArgumentException("not a wall of the room: " + wall.getName())); //$NON-NLS-1$
		return new PlanShape(List.of(side.at(x0.units(), near.units()), side.at(x1.units(), near.units()),
				side.at(x1.units(), far.units()), side.at(x0.units(), far.units())));
	}

	/** Returns the walls as lines on the plan, in walking order. */
	public List<PlanShape> walls() {
		return sides.stream().map(side -> of(side.wall, Length.ZERO, SurveyedOutline.orZero(side.wall.getLength()),
				Length.ZERO)).toList();
	}

	/** Cosine that is exact at square corners, where floating point would be off by a hair. */
	private static double cosine(double degrees) {
		double turn = ((degrees % FULL_TURN) + FULL_TURN) % FULL_TURN;
		if (turn % RIGHT_ANGLE == 0) {
			return new int[] { 1, 0, -1, 0 }[(int) (turn / RIGHT_ANGLE) % 4];
		}
		return Math.cos(Math.toRadians(turn));
	}
}
