// SPDX-License-Identifier: EPL-2.0
package wainscribe.profile.section;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

import wainscribe.model.length.Length;

/**
 * A cubic Bezier curve.
 *
 * @param start  where it begins
 * @param first  handle towards which it leaves the start
 * @param second handle from which it reaches the end
 * @param end    where it ends
 */
public record CurveSegment(SectionPoint start, SectionPoint first, SectionPoint second, SectionPoint end) implements Segment {

	private static final int MOST_CHORDS = 2000;

	/** Refuses nulls. */
	public CurveSegment {
		Objects.requireNonNull(start);
		Objects.requireNonNull(first);
		Objects.requireNonNull(second);
		Objects.requireNonNull(end);
	}

	@Override
	public double lengthMillimetres() {
		return new CurveLength(start.spot(), first.spot(), second.spot(), end.spot()).millimetres();
	}

	@Override
	public Spot at(double share) {
		double rest = 1 - share;
		double a = rest * rest * rest;
		double b = 3 * rest * rest * share;
		double c = 3 * rest * share * share;
		double d = share * share * share;
		return new Spot(a * x(start) + b * x(first) + c * x(second) + d * x(end),
				a * y(start) + b * y(first) + c * y(second) + d * y(end));
	}

	/** Green's theorem on the cubic; the integral is a polynomial in the four points. */
	@Override
	public double sweptArea() {
		Spot p = start.spot();
		Spot q = first.spot();
		Spot r = second.spot();
		Spot s = end.spot();
		return (6 * p.cross(q) + 3 * p.cross(r) + p.cross(s) + 3 * q.cross(r) + 3 * q.cross(s) + 6 * r.cross(s)) / 20;
	}

	@Override
	public List<Double> turns() {
		List<Double> shares = new ArrayList<>();
		addTurns(shares, x(start), x(first), x(second), x(end));
		addTurns(shares, y(start), y(first), y(second), y(end));
		return shares.stream().sorted().toList();
	}

	/** Adds the roots of the derivative, a quadratic, that lie inside the curve. */
	private static void addTurns(List<Double> shares, double p, double q, double r, double s) {
		double a = s - p + 3 * (q - r);
		double b = 2 * (p - 2 * q + r);
		double c = q - p;
		double root = Math.sqrt(b * b - 4 * a * c);
		// Of the two forms of the solution the one without cancellation is taken for each root.
		double k = -(b + Math.copySign(root, b)) / 2;
		for (double share : new double[] { k / a, c / k }) {
			if (share > 0 && share < 1) {
				shares.add(share);
			}
		}
	}

	@Override
	public List<Spot> chords(double tolerance) {
		double bend = Math.max(Math.hypot(x(start) - 2 * x(first) + x(second), y(start) - 2 * y(first) + y(second)),
				Math.hypot(x(first) - 2 * x(second) + x(end), y(first) - 2 * y(second) + y(end)));
		int count = (int) Math.clamp(Math.ceil(Math.sqrt(0.75 * bend / tolerance)), 1, MOST_CHORDS);
		List<Spot> spots = new ArrayList<>();
		for (int i = 1; i < count; i++) {
			spots.add(at((double) i / count));
		}
		spots.add(end.spot());
		return spots;
	}

	/** Cuts at the parameter by repeated halving of the handles' lines (de Casteljau). */
	@Override
	public List<Segment> split(double share) {
		Spot a = start.spot().towards(first.spot(), share);
		Spot b = first.spot().towards(second.spot(), share);
		Spot c = second.spot().towards(end.spot(), share);
		Spot d = a.towards(b, share);
		Spot e = b.towards(c, share);
		SectionPoint middle = d.towards(e, share).nearest();
		return List.of(new CurveSegment(start, a.nearest(), d.nearest(), middle),
				new CurveSegment(middle, e.nearest(), c.nearest(), end));
	}

	@Override
	public CurveSegment reversed() {
		return new CurveSegment(end, second, first, start);
	}

	@Override
	public CurveSegment moved(Length dx, Length dy) {
		return new CurveSegment(start.moved(dx, dy), first.moved(dx, dy), second.moved(dx, dy), end.moved(dx, dy));
	}

	@Override
	public CurveSegment mirrored(Length sum) {
		return new CurveSegment(start.mirrored(sum), first.mirrored(sum), second.mirrored(sum), end.mirrored(sum));
	}

	@Override
	public CurveSegment between(SectionPoint from, SectionPoint to) {
		return new CurveSegment(from, first.moved(from.x().minus(start.x()), from.y().minus(start.y())),
				second.moved(to.x().minus(end.x()), to.y().minus(end.y())), to);
	}

	private static double x(SectionPoint point) {
		return point.x().approximateMillimetres();
	}

	private static double y(SectionPoint point) {
		return point.y().approximateMillimetres();
	}
}
