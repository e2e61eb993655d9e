// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.profile.snapping;

import java.util.Objects;
import java.util.Optional;

import wainscribe.model.length.Length;
import wainscribe.profile.section.SectionPoint;

/**
 * A line through a point of the section that moved points like to be on.
 *
 * @param through the point
 * @param heading which way the line runs
 */
public record GuideLine(SectionPoint through, Heading heading) {

	private static final double DIAGONAL = Math.sqrt(2);

	/** Refuses nulls. */
	public GuideLine {
		Objects.requireNonNull(through);
		Objects.requireNonNull(heading);
	}

	private Length constant() {
		return through.x().times(heading.up()).plus(through.y().times(heading.out()));
	}

	private Length off(SectionPoint point) {
		return point.x().times(heading.up()).plus(point.y().times(heading.out())).minus(constant());
	}

	/** Returns how far a point is from the line in millimetres. */
	public double distanceTo(SectionPoint point) {
		double off = Math.abs(off(point).approximateMillimetres());
		return heading.up() != 0 && heading.out() != 0 ? off / DIAGONAL : off;
	}

	/**
	 * Returns the point of the line near another, with the coordinate that is free on a mark.
	 *
	 * @param point near the line
	 * @param mark  distance between marks
	 */
	public SectionPoint nearest(SectionPoint point, Length mark) {
		return switch (heading) {
			case LEVEL -> new SectionPoint(through.x(), point.y().roundedTo(mark));
			case PLUMB -> new SectionPoint(point.x().roundedTo(mark), through.y());
			case RISING, FALLING -> {
				Length x = point.x().minus(off(point).dividedBy(2)).roundedTo(mark);
				Length rest = constant().minus(x);
				yield new SectionPoint(x, heading == Heading.RISING ? rest.negated() : rest);
			}
		};
	}

	/** Returns where two lines meet; empty if they run the same way. */
	public Optional<SectionPoint> meeting(GuideLine other) {
		int det = heading.up() * other.heading.out() - other.heading.up() * heading.out();
		if (det == 0) {
			return Optional.empty();
		}
		Length x = constant().times(other.heading.out()).minus(other.constant().times(heading.out()));
		Length y = other.constant().times(heading.up()).minus(constant().times(other.heading.up()));
		return Optional.of(new SectionPoint(x.dividedBy(det), y.dividedBy(det)));
	}
}
