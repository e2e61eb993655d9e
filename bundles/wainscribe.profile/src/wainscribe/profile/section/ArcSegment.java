// SPDX-License-Identifier: EPL-2.0
package wainscribe.profile.section;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

import wainscribe.model.length.Length;

/**
 * A stretch of a circle, given by its ends and its rise, as a joiner strikes it: the height of the arc's middle over the
 * chord. Any rise but nought gives exactly one circle, so an arc can never miss its ends.
 * <p>
 * With chord c and rise h the radius is (c&sup2; / 4 + h&sup2;) / 2h and the arc turns by 4 atan(2h / c) (plane geometry,
 * intersecting chords). Half the chord is a half circle, more is the larger part of a circle.
 *
 * @param start where it begins
 * @param end   where it ends, another point
 * @param rise  height of the middle over the chord, not nought; above 0 when it lies left of the way from start to end
 */
public record ArcSegment(SectionPoint start, SectionPoint end, Length rise) implements Segment {

	private static final double SMALL_TURN = 0.01;

	/** Refuses nulls, an arc without a chord and one without a rise. */
	public ArcSegment {
		Objects.requireNonNull(start);
		Objects.requireNonNull(end);
		if (start.equals(end) || rise.signum() == 0) {
			throw new IllegalArgumentException("an arc needs two ends and a rise"); //$NON-NLS-1$
		}
	}

	/**
	 * Returns the arc between two points that passes through a third, or the straight stretch if all lie in line.
	 *
	 * @param start where it begins
	 * @param via   a point on it
	 * @param end   where it ends
	 */
	public static Segment through(SectionPoint start, SectionPoint via, SectionPoint end) {
		Spot a = start.spot();
		Spot v = via.spot();
		Spot b = end.spot();
		double cross = (b.x() - a.x()) * (v.y() - a.y()) - (b.y() - a.y()) * (v.x() - a.x());
		double dot = (a.x() - v.x()) * (b.x() - v.x()) + (a.y() - v.y()) * (b.y() - v.y());
		// The chord is seen from any point of the arc under one angle; from it follows the turn (inscribed angle).
		double turn = 2 * (Math.PI - Math.abs(Math.atan2(cross, dot)));
		return of(start, end, Math.copySign(a.distanceTo(b) / 2 * Math.tan(turn / 4), cross));
	}

	/** Returns an arc with a rise in millimetres, or the straight stretch if that rounds to nothing. */
	static Segment of(SectionPoint start, SectionPoint end, double rise) {
		Length exact = Spot.nearest(rise);
		return exact.signum() == 0 || start.equals(end) ? new StraightSegment(start, end) : new ArcSegment(start, end, exact);
	}

	/** Returns the radius in millimetres. */
	public double radius() {
		double height = Math.abs(rise.approximateMillimetres());
		return (chord() * chord() / 4 + height * height) / (2 * height);
	}

	/** Returns the angle travelled from start to end in radians, positive anticlockwise. */
	public double sweep() {
		return -4 * Math.atan(2 * rise.approximateMillimetres() / chord());
	}

	/** Returns the centre of the circle. */
	public Spot centre() {
		Spot a = start.spot();
		Spot b = end.spot();
		double height = rise.approximateMillimetres();
		double out = (height - Math.copySign(radius(), height)) / chord();
		return new Spot((a.x() + b.x()) / 2 - (b.y() - a.y()) * out, (a.y() + b.y()) / 2 + (b.x() - a.x()) * out);
	}

	private double chord() {
		return start.spot().distanceTo(end.spot());
	}

	private double startAngle() {
		Spot centre = centre();
		return Math.atan2(start.spot().y() - centre.y(), start.spot().x() - centre.x());
	}

	@Override
	public double lengthMillimetres() {
		return radius() * Math.abs(sweep());
	}

	@Override
	public Spot at(double share) {
		if (share <= 0 || share >= 1) {
			return share <= 0 ? start.spot() : end.spot();
		}
		double angle = startAngle() + sweep() * share;
		return new Spot(centre().x() + radius() * Math.cos(angle), centre().y() + radius() * Math.sin(angle));
	}

	@Override
	public double sweptArea() {
		double turn = sweep();
		double beyondChord = Math.abs(turn) < SMALL_TURN ? turn * turn * turn / 6 - Math.pow(turn, 5) / 120 : turn - Math.sin(turn);
		return start.spot().cross(end.spot()) / 2 + radius() * radius() * beyondChord / 2;
	}

	@Override
	public List<Double> turns() {
		List<Double> shares = new ArrayList<>();
		double quarter = Math.PI / 2;
		double from = startAngle();
		double low = Math.min(from, from + sweep());
		double high = Math.max(from, from + sweep());
		for (double angle = Math.ceil(low / quarter) * quarter; angle < high; angle += quarter) {
			double share = (angle - from) / sweep();
			if (share > 0 && share < 1) {
				shares.add(share);
			}
		}
		return shares;
	}

	@Override
	public List<Spot> chords(double tolerance) {
		double step = 2 * Math.acos(Math.max(0, 1 - tolerance / radius()));
		int count = (int) Math.max(1, Math.ceil(Math.abs(sweep()) / Math.max(step, 1e-3)));
		List<Spot> spots = new ArrayList<>();
		for (int i = 1; i <= count; i++) {
			spots.add(at((double) i / count));
		}
		return spots;
	}

	@Override
	public List<Segment> split(double share) {
		SectionPoint middle = at(share).nearest();
		return List.of(of(start, middle, riseOfShare(share)), of(middle, end, riseOfShare(1 - share)));
	}

	private double riseOfShare(double share) {
		double quarterTurn = Math.sin(sweep() * share / 4);
		return Math.copySign(2 * radius() * quarterTurn * quarterTurn, rise.signum());
	}

	@Override
	public ArcSegment reversed() {
		return new ArcSegment(end, start, rise.negated());
	}

	@Override
	public ArcSegment moved(Length dx, Length dy) {
		return new ArcSegment(start.moved(dx, dy), end.moved(dx, dy), rise);
	}

	@Override
	public ArcSegment mirrored(Length sum) {
		return new ArcSegment(start.mirrored(sum), end.mirrored(sum), rise.negated());
	}

	@Override
	public Segment between(SectionPoint from, SectionPoint to) {
		return of(from, to, rise.approximateMillimetres() * from.spot().distanceTo(to.spot()) / chord());
	}
}
