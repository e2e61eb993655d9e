// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.elevation.snapping;

import java.util.Objects;

import wainscribe.model.length.Length;
import wainscribe.model.outline.Outline;

/**
 * How far the four edges of an outline are moved: right and up are positive.
 *
 * @param left   shift of the left edge
 * @param bottom shift of the lower edge
 * @param right  shift of the right edge
 * @param top    shift of the upper edge
 */
public record EdgeShift(Length left, Length bottom, Length right, Length top) {

	/** Refuses nulls. */
	public EdgeShift {
		Objects.requireNonNull(left);
		Objects.requireNonNull(bottom);
		Objects.requireNonNull(right);
		Objects.requireNonNull(top);
	}

	/** Returns the shift of a whole outline. */
	public static EdgeShift moving(Length dx, Length dy) {
		return new EdgeShift(dx, dy, dx, dy);
	}

	/** Tells whether the outline keeps its size. */
	public boolean isMove() {
		return left.equals(right) && bottom.equals(top);
	}

	/** Returns the shift without its part along the wall. */
	public EdgeShift plumbOnly() {
		return new EdgeShift(Length.ZERO, bottom, Length.ZERO, top);
	}

	/** Returns the shift without its part up the wall. */
	public EdgeShift levelOnly() {
		return new EdgeShift(left, Length.ZERO, right, Length.ZERO);
	}

	/** Returns the shift with what moves along the wall moved further. */
	public EdgeShift alongBy(Length dx) {
		return new EdgeShift(left.signum() == 0 ? left : left.plus(dx), bottom, right.signum() == 0 ? right : right.plus(dx), top);
	}

	/** Returns the shift with what moves up the wall moved further. */
	public EdgeShift upBy(Length dy) {
		return new EdgeShift(left, bottom.signum() == 0 ? bottom : bottom.plus(dy), right, top.signum() == 0 ? top : top.plus(dy));
	}

	/**
	 * Shifts an outline. Edges never pass each other: the moved one stops at the other.
	 *
	 * @param outline before
	 * @return after
	 */
	public Outline applyTo(Outline outline) {
		if (isMove()) {
			return Outline.ofSize(outline.x0().plus(left), outline.y0().plus(bottom), outline.width(), outline.height());
		}
		Length x0 = outline.x0().plus(left);
		Length x1 = outline.x1().plus(right);
		Length y0 = outline.y0().plus(bottom);
		Length y1 = outline.y1().plus(top);
		if (x1.isLessThan(x0)) {
			x0 = left.signum() == 0 ? x0 : x1;
			x1 = left.signum() == 0 ? x0 : x1;
		}
		if (y1.isLessThan(y0)) {
			y0 = bottom.signum() == 0 ? y0 : y1;
			y1 = bottom.signum() == 0 ? y0 : y1;
		}
		return new Outline(x0, y0, x1, y1);
	}
}
