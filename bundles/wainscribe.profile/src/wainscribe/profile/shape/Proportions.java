// SPDX-License-Identifier: EPL-2.0
package wainscribe.profile.shape;

import java.util.List;

import wainscribe.model.length.Length;
import wainscribe.profile.section.SectionPoint;

/** Parts that several shapes share. */
final class Proportions {

	/** The back of what stands on the floor: down the wall, then out along the floor to the face. */
	static final List<SectionPoint> FLOOR = List.of(SectionPoint.ORIGIN);

	private Proportions() {
	}

	/** Returns the back of what fills the angle of wall and ceiling. */
	static List<SectionPoint> ceiling(Length width) {
		return List.of(new SectionPoint(width, Length.ZERO));
	}

	/** Returns the back of a sprung crown: a stretch of ceiling, a slope, a stretch of wall. */
	static List<SectionPoint> sprung(Length width, Length thickness) {
		return List.of(new SectionPoint(width, thickness.times(3).dividedBy(4)),
				new SectionPoint(width.dividedBy(4), Length.ZERO));
	}

	/** Returns the i-th of equally spaced marks; marks are rounded from one end, so what lies between them never drifts. */
	static Length mark(Length whole, int i, int parts) {
		return whole.times(i).dividedBy(parts);
	}

	/**
	 * Returns the handle of a quarter circle or oval drawn as one Bezier curve: 4/3 (sqrt 2 - 1) of the half axis, 0.5523; the
	 * curve is less than 0.03 % of the axis off.
	 */
	static Length quarter(Length axis) {
		return axis.times(5523).dividedBy(10_000);
	}
}
