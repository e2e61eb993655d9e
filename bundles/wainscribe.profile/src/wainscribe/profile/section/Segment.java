// SPDX-License-Identifier: EPL-2.0
package wainscribe.profile.section;

import java.util.List;

import wainscribe.model.length.Length;

/**
 * One stretch of the outline of a section, from a start to an end. What describes it is exact; what is measured on it is
 * floating point in millimetres.
 */
public sealed interface Segment permits StraightSegment, ArcSegment, CurveSegment {

	/** Returns where it begins. */
	SectionPoint start();

	/** Returns where it ends. */
	SectionPoint end();

	/** Returns the length along it in millimetres, to 0.000001 mm. */
	double lengthMillimetres();

	/**
	 * Returns the point after a share of the way.
	 *
	 * @param share 0 at the start to 1 at the end; on a curve the share of its parameter, not of its length
	 */
	Spot at(double share);

	/** Returns the share of the way that is nearest to a point, from 0 to 1. */
	default double nearestShare(Spot to) {
		return NearestShare.on(this, to);
	}

	/** Returns the area swept between the origin and this in square millimetres, positive anticlockwise. */
	double sweptArea();

	/** Returns the shares, above 0 and under 1, where this runs along or square to the wall: its outermost points. */
	List<Double> turns();

	/**
	 * Returns the points of a chain of chords along this, without its start and with its end.
	 *
	 * @param tolerance greatest distance between chord and segment in millimetres, above 0
	 */
	List<Spot> chords(double tolerance);

	/**
	 * Cuts this in two; the point between them is rounded to the nearest exact one.
	 *
	 * @param share above 0 and under 1
	 * @return both parts in their order
	 */
	List<Segment> split(double share);

	/** Returns the same stretch walked the other way. */
	Segment reversed();

	/** Returns the same stretch at another place. */
	Segment moved(Length dx, Length dy);

	/** Returns this mirrored on an axis square to the wall, walked the same way; {@code sum} is twice the axis' x. */
	Segment mirrored(Length sum);

	/**
	 * Returns this between other ends: an arc keeps its turn, a curve the way it leaves and reaches its ends.
	 *
	 * @param start new start
	 * @param end   new end
	 */
	Segment between(SectionPoint start, SectionPoint end);
}
