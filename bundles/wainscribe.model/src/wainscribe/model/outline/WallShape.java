// SPDX-License-Identifier: EPL-2.0
package wainscribe.model.outline;

import java.math.BigInteger;
import java.util.Objects;

import wainscribe.model.Room;
import wainscribe.model.Wall;
import wainscribe.model.length.Length;

/**
 * The outline of a wall: floor line and ceiling line, level or sloped.
 * <p>
 * Heights are from the finished floor at the wall's left end; the survey's {@code heightRight} is measured above the floor
 * line at the right end.
 *
 * @param length       length of the wall
 * @param floorRight   height of the floor line at the right end, zero when level
 * @param ceilingLeft  height of the ceiling at the left end
 * @param ceilingRight height of the ceiling at the right end
 */
public record WallShape(Length length, Length floorRight, Length ceilingLeft, Length ceilingRight) {

	/** Refuses nulls. */
	public WallShape {
		Objects.requireNonNull(length);
		Objects.requireNonNull(floorRight);
		Objects.requireNonNull(ceilingLeft);
		Objects.requireNonNull(ceilingRight);
	}

	/**
	 * Returns the shape of a wall; a height that was measured nowhere counts as zero.
	 *
	 * @param wall a wall in its room
	 */
	public static WallShape of(Wall wall) {
		Room room = wall.getRoom();
		Length height = first(wall.getHeight(), room == null ? null : room.getHeight());
		Length floorRight = first(wall.getFloorRight(), Length.ZERO);
		Length right = first(wall.getHeightRight(), height);
		return new WallShape(first(wall.getLength(), Length.ZERO), floorRight, height, floorRight.plus(right));
	}

	/** Returns the height of the floor line, rounded down to 1/8000 mm. */
	public Length floorAt(Length x) {
		return between(Length.ZERO, floorRight, x);
	}

	/** Returns the height of the ceiling line, rounded down to 1/8000 mm. */
	public Length ceilingAt(Length x) {
		return between(ceilingLeft, ceilingRight, x);
	}

	/** Tells whether the floor line is not level. */
	public boolean isFloorSloped() {
		return floorRight.signum() != 0;
	}

	/** Tells whether the ceiling line is not level. */
	public boolean isCeilingSloped() {
		return !ceilingLeft.equals(ceilingRight);
	}

	private Length between(Length left, Length right, Length x) {
		if (length.signum() == 0 || left.equals(right)) {
			return left;
		}
		BigInteger climb = BigInteger.valueOf(right.minus(left).units()).multiply(BigInteger.valueOf(x.units()));
		BigInteger[] parts = climb.divideAndRemainder(BigInteger.valueOf(length.units()));
		long down = parts[1].signum() < 0 ? 1 : 0;
		return left.plus(new Length(parts[0].longValueExact() - down));
	}

	private static Length first(Length measured, Length otherwise) {
		if (measured != null) {
			return measured;
		}
		return otherwise == null ? Length.ZERO : otherwise;
	}
}
