// SPDX-License-Identifier: EPL-2.0
package wainscribe.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * Lines and arcs in one stroke. A closed path is filled where the style of its role has a fill.
 *
 * @param subject  what it stands for
 * @param role     what decides its look
 * @param start    where it begins
 * @param segments at least one stroke
 * @param closed   whether a straight line leads back to the start
 */
public record Path(Subject subject, Role role, Point start, List<Segment> segments, boolean closed) implements Shape {

	/** Refuses nulls and copies the list. */
	public Path {
		Objects.requireNonNull(subject);
		Objects.requireNonNull(role);
		Objects.requireNonNull(start);
		segments = List.copyOf(segments);
		if (segments.isEmpty()) {
			throw new IllegalArgumentException("a path needs a stroke");
		}
	}

	/** Returns a straight line. */
	public static Path line(Subject subject, Role role, Point from, Point to) {
		return new Path(subject, role, from, List.of(new Segment.Straight(to)), false);
	}

	/**
	 * Returns a closed polygon.
	 *
	 * @param corners at least two
	 */
	public static Path polygon(Subject subject, Role role, List<Point> corners) {
		return new Path(subject, role, corners.getFirst(), straight(corners), true);
	}

	/**
	 * Returns an open line through some points.
	 *
	 * @param points at least two
	 */
	public static Path polyline(Subject subject, Role role, List<Point> points) {
		return new Path(subject, role, points.getFirst(), straight(points), false);
	}

	/** Returns a closed upright rectangle. */
	public static Path rectangle(Subject subject, Role role, Bounds bounds) {
		return polygon(subject, role, List.of(new Point(bounds.x0(), bounds.y0()), new Point(bounds.x1(), bounds.y0()),
				new Point(bounds.x1(), bounds.y1()), new Point(bounds.x0(), bounds.y1())));
	}

	/** Returns a closed circle, drawn anticlockwise as two half circles. */
	public static Path circle(Subject subject, Role role, Point centre, double radius) {
		Point right = centre.plus(radius, 0);
		return new Path(subject, role, right, List.of(new Segment.Curve(centre.plus(-radius, 0), centre, Math.PI),
				new Segment.Curve(right, centre, Math.PI)), true);
	}

	/** Returns its corners with arcs broken into short lines; the start of a closed path is not repeated. */
	public List<Point> flattened() {
		List<Point> points = new ArrayList<>(segments.size() + 1);
		points.add(start);
		Point from = start;
		for (Segment segment : segments) {
			if (segment instanceof Segment.Straight) {
				points.add(segment.end());
			} else {
				points.addAll(segment.flattened(from));
			}
			from = segment.end();
		}
		if (closed && points.size() > 1 && points.getLast().equals(start)) {
			points.removeLast();
		}
		return points;
	}

	@Override
	public Bounds bounds() {
		return Bounds.around(flattened());
	}

	private static List<Segment> straight(List<Point> points) {
		return points.stream().skip(1).<Segment>map(Segment.Straight::new).toList();
	}
}
