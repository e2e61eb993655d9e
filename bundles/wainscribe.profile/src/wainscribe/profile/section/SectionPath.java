// SPDX-License-Identifier: EPL-2.0
package wainscribe.profile.section;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

import wainscribe.model.length.Length;

/**
 * A pen that draws the face of a section segment by segment, relative to where it is, and then its back.
 * <p>
 * "Hollow" curves bend into the moulding (cove, scotia), "round" ones out of it (ovolo, bead). Points are exact; the rise of
 * an arc is rounded once to the nearest unit of 1/8000 mm, which changes the length of the arc by less than 0.001 mm.
 */
public final class SectionPath {

	private final SectionPoint origin;
	private final List<Segment> segments = new ArrayList<>();
	private SectionPoint pen;

	/** Puts the pen where the face begins. */
	public SectionPath(SectionPoint origin) {
		this.origin = Objects.requireNonNull(origin);
		pen = origin;
	}

	/** Returns a pen at the lower edge on the wall. */
	public static SectionPath atOrigin() {
		return new SectionPath(SectionPoint.ORIGIN);
	}

	/** Returns a pen above the lower edge, where a face begins that stands on the floor. */
	public static SectionPath offTheWall(Length y) {
		return new SectionPath(new SectionPoint(Length.ZERO, y));
	}

	/** Draws straight up along the wall (below 0: down); nothing for nought. */
	public SectionPath along(Length dx) {
		return line(dx, Length.ZERO);
	}

	/** Draws straight away from the wall (below 0: towards it); nothing for nought. */
	public SectionPath out(Length dy) {
		return line(Length.ZERO, dy);
	}

	/** Draws a straight line; nothing where both distances are nought. */
	public SectionPath line(Length dx, Length dy) {
		return dx.signum() == 0 && dy.signum() == 0 ? this : add(new StraightSegment(pen, pen.moved(dx, dy)));
	}

	/**
	 * Draws an arc that bends out of the moulding: a quarter round where dx and dy are alike, else it is parallel to the longer at one
	 * end.
	 */
	public SectionPath round(Length dx, Length dy) {
		return arc(dx, dy, quarter(dx, dy));
	}

	/**
	 * Draws an arc that bends into the moulding: a quarter hollow where dx and dy are alike, else it is parallel to the longer at
	 * one end.
	 */
	public SectionPath hollow(Length dx, Length dy) {
		return arc(dx, dy, -quarter(dx, dy));
	}

	/**
	 * Returns the rise of the arc over dx by dy that runs along the longer of the two at one end, so that it keeps within both:
	 * it turns by twice the angle between chord and longer side, hence with chord c, long side l and short side s the rise
	 * c (c - l) / 2 s.
	 */
	private static double quarter(Length dx, Length dy) {
		double one = Math.abs(dx.approximateMillimetres());
		double other = Math.abs(dy.approximateMillimetres());
		double chord = Math.hypot(one, other);
		double shorter = Math.min(one, other);
		double rise = shorter == 0 ? 0 : chord * (chord - Math.max(one, other)) / (2 * shorter);
		return dx.signum() < 0 ? -rise : rise;
	}

	/**
	 * Draws an ogee: two equal arcs, round at the high end and hollow at the low one, dx further and dy higher (negative: lower).
	 * They are parallel to the longer side at both ends.
	 */
	public SectionPath ogee(Length dx, Length dy) {
		return doubled(dx, dy, dy.signum() < 0);
	}

	/** Draws an ogee the other way, hollow at the high end and round at the low one. */
	public SectionPath reversedOgee(Length dx, Length dy) {
		return doubled(dx, dy, dy.signum() > 0);
	}

	private SectionPath doubled(Length dx, Length dy, boolean roundFirst) {
		Length x = dx.dividedBy(2);
		Length y = dy.dividedBy(2);
		return roundFirst ? round(x, y).hollow(dx.minus(x), dy.minus(y)) : hollow(x, y).round(dx.minus(x), dy.minus(y));
	}

	/** Draws a half circle away from the wall that ends dx further at the same height. */
	public SectionPath halfRound(Length dx) {
		return arc(dx, Length.ZERO, dx.dividedBy(2));
	}

	/** Draws a half circle towards the wall, a flute, that ends dx further at the same height. */
	public SectionPath flute(Length dx) {
		return arc(dx, Length.ZERO, dx.dividedBy(2).negated());
	}

	/** Draws an arc with a given rise, above 0 for one that bends out of the moulding. */
	public SectionPath arc(Length dx, Length dy, Length rise) {
		return add(new ArcSegment(pen, pen.moved(dx, dy), rise));
	}

	private SectionPath arc(Length dx, Length dy, double rise) {
		return dx.signum() == 0 && dy.signum() == 0 ? this : add(ArcSegment.of(pen, pen.moved(dx, dy), rise));
	}

	/** Draws a cubic Bezier curve through points that are given by their distances from the pen. */
	public SectionPath curve(SectionPoint first, SectionPoint second, SectionPoint end) {
		return add(new CurveSegment(pen, pen.moved(first.x(), first.y()), pen.moved(second.x(), second.y()),
				pen.moved(end.x(), end.y())));
	}

	/** Returns where the pen is. */
	public SectionPoint pen() {
		return pen;
	}

	/** Returns the section; its back is one straight line from the pen to where the face began. */
	public ProfileSection section() {
		return sectionBehind(List.of());
	}

	/**
	 * Returns the section with a back through the given points.
	 *
	 * @param back between the end of the face and its start
	 */
	public ProfileSection sectionBehind(List<SectionPoint> back) {
		List<Segment> lines = new ArrayList<>();
		SectionPoint from = pen;
		for (SectionPoint to : back) {
			lines.add(new StraightSegment(from, to));
			from = to;
		}
		if (!from.equals(origin)) {
			lines.add(new StraightSegment(from, origin));
		}
		return new ProfileSection(segments, lines);
	}

	private SectionPath add(Segment segment) {
		segments.add(segment);
		pen = segment.end();
		return this;
	}
}
