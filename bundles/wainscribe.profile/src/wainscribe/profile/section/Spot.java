// SPDX-License-Identifier: EPL-2.0
package wainscribe.profile.section;

import wainscribe.model.length.Length;

/**
 * A point in millimetres, for painting and measuring only; what is stored is a {@link SectionPoint}.
 *
 * @param x along the wall
 * @param y away from the wall
 */
public record Spot(double x, double y) {

	/** Returns the distance to another point in millimetres. */
	public double distanceTo(Spot other) {
		return Math.hypot(other.x - x, other.y - y);
	}

	/** Returns the exact point nearest to this one, at most half a unit away along either axis. */
	public SectionPoint nearest() {
		return new SectionPoint(nearest(x), nearest(y));
	}

	/** Returns the exact length nearest to millimetres. */
	public static Length nearest(double millimetres) {
		return new Length(Math.round(millimetres * Length.UNITS_PER_MILLIMETRE));
	}

	/** Returns the point a share of the way to another. */
	Spot towards(Spot other, double share) {
		return new Spot(x + (other.x - x) * share, y + (other.y - y) * share);
	}

	/** Returns twice the signed area of the triangle between the origin and the two points. */
	double cross(Spot other) {
		return x * other.y - y * other.x;
	}
}
