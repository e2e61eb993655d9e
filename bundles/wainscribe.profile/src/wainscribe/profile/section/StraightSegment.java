// SPDX-License-Identifier: EPL-2.0
package wainscribe.profile.section;

import java.util.List;
import java.util.Objects;

import wainscribe.model.length.Length;

/**
 * A straight stretch.
 *
 * @param start where it begins
 * @param end   where it ends
 */
public record StraightSegment(SectionPoint start, SectionPoint end) implements Segment {

	/** Refuses nulls. */
	public StraightSegment {
		Objects.requireNonNull(start);
		Objects.requireNonNull(end);
	}

	@Override
	public double lengthMillimetres() {
		return start.spot().distanceTo(end.spot());
	}

	@Override
	public Spot at(double share) {
		return start.spot().towards(end.spot(), share);
	}

	@Override
	public double sweptArea() {
		return start.spot().cross(end.spot()) / 2;
	}

	@Override
	public List<Double> turns() {
		return List.of();
	}

	@Override
	public List<Spot> chords(double tolerance) {
		return List.of(end.spot());
	}

	@Override
	public List<Segment> split(double share) {
		SectionPoint middle = at(share).nearest();
		return List.of(new StraightSegment(start, middle), new StraightSegment(middle, end));
	}

	@Override
	public StraightSegment reversed() {
		return new StraightSegment(end, start);
	}

	@Override
	public StraightSegment moved(Length dx, Length dy) {
		return new StraightSegment(start.moved(dx, dy), end.moved(dx, dy));
	}

	@Override
	public StraightSegment mirrored(Length sum) {
		return new StraightSegment(start.mirrored(sum), end.mirrored(sum));
	}

	@Override
	public StraightSegment between(SectionPoint from, SectionPoint to) {
		return new StraightSegment(from, to);
	}
}
