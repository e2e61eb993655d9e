// SPDX-License-Identifier: EPL-2.0
package wainscribe.profile.section;

import java.util.Objects;

import wainscribe.model.length.Length;

/**
 * An exact point of a section.
 *
 * @param x along the wall, from the lower edge upwards
 * @param y away from the wall
 */
public record SectionPoint(Length x, Length y) {

	/** Lower edge, on the wall. */
	public static final SectionPoint ORIGIN = new SectionPoint(Length.ZERO, Length.ZERO);

	/** Refuses nulls. */
	public SectionPoint {
		Objects.requireNonNull(x);
		Objects.requireNonNull(y);
	}

	/** Returns a point at whole millimetres. */
	public static SectionPoint ofMillimetres(long x, long y) {
		return new SectionPoint(Length.ofMillimetres(x), Length.ofMillimetres(y));
	}

	/** Returns the point that lies dx and dy further. */
	public SectionPoint moved(Length dx, Length dy) {
		return new SectionPoint(x.plus(dx), y.plus(dy));
	}

	/** Returns the point on the other side of an axis square to the wall; {@code sum} is twice the distance of the axis. */
	SectionPoint mirrored(Length sum) {
		return new SectionPoint(sum.minus(x), y);
	}

	/** Returns the point in millimetres, for painting and measuring. */
	public Spot spot() {
		return new Spot(x.approximateMillimetres(), y.approximateMillimetres());
	}
}
