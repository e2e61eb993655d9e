// SPDX-License-Identifier: EPL-2.0
package wainscribe.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/** One stroke of a {@link Path}, beginning where the one before ended. */
public sealed interface Segment permits Segment.Straight, Segment.Curve {

	/** Returns where it ends. */
	Point end();

	/**
	 * Returns points along the stroke, without its start and with its end, close enough to it for painting.
	 *
	 * @param start where it begins
	 */
	List<Point> flattened(Point start);

	/**
	 * A straight line.
	 *
	 * @param end where it ends
	 */
	record Straight(Point end) implements Segment {
		/** Refuses null. */
		public Straight {
			Objects.requireNonNull(end);
		}

		@Override
		public List<Point> flattened(Point start) {
			return List.of(end);
		}
	}

	/**
	 * A circular arc.
	 *
	 * @param end    where it ends, as far from the centre as its start
	 * @param centre of the circle
	 * @param sweep  angle travelled in radians, positive anticlockwise
	 */
	record Curve(Point end, Point centre, double sweep) implements Segment {
		private static final double STEP = Math.PI / 16;

		/** Refuses nulls. */
		public Curve {
			Objects.requireNonNull(end);
			Objects.requireNonNull(centre);
		}

		/** Returns the radius. */
		public double radius() {
			return centre.distance(end);
		}

		/** Returns the direction of the start as seen from the centre, radians. */
		public double startAngle() {
			return Math.atan2(end.y() - centre.y(), end.x() - centre.x()) - sweep;
		}

		@Override
		public List<Point> flattened(Point start) {
			int steps = Math.max(1, (int) Math.ceil(Math.abs(sweep) / STEP));
			double radius = radius();
			double first = startAngle();
			List<Point> points = new ArrayList<>(steps);
			for (int i = 1; i < steps; i++) {
				double angle = first + sweep * i / steps;
				points.add(centre.plus(radius * Math.cos(angle), radius * Math.sin(angle)));
			}
			points.add(end);
			return points;
		}
	}
}
