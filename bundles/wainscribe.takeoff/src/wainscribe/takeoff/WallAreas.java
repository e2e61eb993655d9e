// SPDX-License-Identifier: EPL-2.0
package wainscribe.takeoff;

import java.math.BigDecimal;

import wainscribe.model.Opening;
import wainscribe.model.Wall;
import wainscribe.model.length.Length;
import wainscribe.model.outline.Outline;
import wainscribe.model.outline.Outlines;
import wainscribe.model.outline.WallShape;

/** Exact areas of walls in square metres. Heights are above the floor line. */
final class WallAreas {

	private static final BigDecimal HALF = new BigDecimal("0.5"); //$NON-NLS-1$

	private WallAreas() {
	}

	/** Returns the area between floor line and ceiling line. */
	static BigDecimal gross(Wall wall) {
		WallShape shape = WallShape.of(wall);
		Length right = shape.ceilingRight().minus(shape.floorRight());
		return area(shape.length(), shape.ceilingLeft().plus(right)).multiply(HALF);
	}

	/** Returns the area of a band that follows the floor line. */
	static BigDecimal band(Wall wall, Length bottom, Length top) {
		return area(WallShape.of(wall).length(), top.minus(bottom).max(Length.ZERO));
	}

	/** Returns the area of the openings that are deducted: those of 1 m2 and more, by what of them lies in the band. */
	static BigDecimal deducted(Wall wall, Length bottom, Length top) {
		BigDecimal sum = BigDecimal.ZERO;
		for (Opening opening : wall.getOpenings()) {
			Outline outline = Outlines.of(opening);
			if (area(outline.width(), outline.height()).compareTo(Practice.LEAST_DEDUCTED) >= 0) {
				Length height = outline.y1().min(top).minus(outline.y0().max(bottom));
				sum = sum.add(area(outline.width(), height.max(Length.ZERO)));
			}
		}
		return sum;
	}

	/** Returns the greatest height of a wall. */
	static Length height(Wall wall) {
		WallShape shape = WallShape.of(wall);
		return shape.ceilingLeft().max(shape.ceilingRight().minus(shape.floorRight()));
	}

	static BigDecimal area(Length width, Length height) {
		return Amounts.metres(width).multiply(Amounts.metres(height));
	}
}
