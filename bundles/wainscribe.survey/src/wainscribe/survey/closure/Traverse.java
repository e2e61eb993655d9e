// SPDX-License-Identifier: EPL-2.0
package wainscribe.survey.closure;

import java.util.ArrayList;
import java.util.List;

/**
 * A closed traverse: a walk that should end where it began.
 * <p>
 * The misclosure is spread by the compass rule: each leg takes a share of it by its length. Floating point is fine here;
 * nothing of it is stored.
 *
 * @param courses the legs in walking order
 */
public record Traverse(List<Course> courses) {

	/** Copies the list. */
	public Traverse {
		courses = List.copyOf(courses);
		if (courses.isEmpty()) {
			throw new IllegalArgumentException("no course"); //$NON-NLS-1$
		}
	}

	/** A point by its distance north and east of the start. */
	public record Point(double north, double east) {

		/** Returns the distance to another point. */
		public double to(Point other) {
			return Math.hypot(other.north - north, other.east - east);
		}
	}

	/** Returns the sum of all lengths. */
	public double perimeter() {
		return courses.stream().mapToDouble(Course::length).sum();
	}

	/** Returns where the walk ends, seen from its start: the sums of latitudes and departures. */
	public Point end() {
		return new Point(courses.stream().mapToDouble(Course::latitude).sum(),
				courses.stream().mapToDouble(Course::departure).sum());
	}

	/** Returns the distance from the end of the walk to its start. */
	public double misclosure() {
		Point end = end();
		return Math.hypot(end.north(), end.east());
	}

	/** Returns the corners as measured, from the start; one more than there are courses. */
	public List<Point> corners() {
		return corners(new Point(0, 0));
	}

	/** Returns the corners after the misclosure is spread by the compass rule; the last is the start again. */
	public List<Point> adjustedCorners() {
		return corners(end());
	}

	private List<Point> corners(Point spread) {
		double perimeter = perimeter();
		List<Point> corners = new ArrayList<>();
		double north = 0;
		double east = 0;
		corners.add(new Point(north, east));
		for (Course course : courses) {
			double share = course.length() / perimeter;
			north += course.latitude() - spread.north() * share;
			east += course.departure() - spread.east() * share;
			corners.add(new Point(north, east));
		}
		return corners;
	}

	/** Returns the area inside the adjusted corners, in squares of the unit of length. */
	public double area() {
		List<Point> corners = adjustedCorners();
		double twice = 0;
		for (int i = 0; i + 1 < corners.size(); i++) {
			twice += corners.get(i).east() * corners.get(i + 1).north() - corners.get(i + 1).east() * corners.get(i).north();
		}
		return Math.abs(twice) / 2;
	}
}
