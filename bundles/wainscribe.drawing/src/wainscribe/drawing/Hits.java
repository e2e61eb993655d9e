// SPDX-License-Identifier: EPL-2.0
package wainscribe.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/** Finds what a drawing shows at a point. Immutable. */
public final class Hits {

	private final Drawing drawing;

	/** Creates a finder for a drawing. */
	public Hits(Drawing drawing) {
		this.drawing = Objects.requireNonNull(drawing);
	}

	/**
	 * Returns what lies at a point, what is painted last first, each thing once.
	 *
	 * @param point     on the wall
	 * @param tolerance how far from a line or edge still counts, millimetres on the wall
	 * @return empty if nothing that stands for something lies there
	 */
	public List<Subject> at(Point point, double tolerance) {
		List<Subject> found = new ArrayList<>();
		for (Shape shape : drawing.shapes().toList().reversed()) {
			if (!shape.subject().equals(Subject.NONE) && !found.contains(shape.subject()) && hits(shape, point, tolerance)) {
				found.add(shape.subject());
			}
		}
		return found;
	}

	private static boolean hits(Shape shape, Point point, double tolerance) {
		return switch (shape) {
			case Label label -> label.bounds().grown(tolerance).contains(point);
			case Dimension dimension -> dimension.label().bounds().grown(tolerance).contains(point);
			case Path path -> path.bounds().grown(tolerance).contains(point) && hits(path, point, tolerance);
		};
	}

	private static boolean hits(Path path, Point point, double tolerance) {
		List<Point> corners = path.flattened();
		if (path.closed() && inside(corners, point)) {
			return true;
		}
		int sides = path.closed() ? corners.size() : corners.size() - 1;
		for (int i = 0; i < sides; i++) {
			if (distance(point, corners.get(i), corners.get((i + 1) % corners.size())) <= tolerance) {
				return true;
			}
		}
		return false;
	}

	/** Counts how often a level line to the right of the point crosses the outline. */
	private static boolean inside(List<Point> corners, Point point) {
		boolean inside = false;
		Point before = corners.getLast();
		for (Point corner : corners) {
			if (corner.y() > point.y() != before.y() > point.y() && point.x() < (before.x() - corner.x())
					* (point.y() - corner.y()) / (before.y() - corner.y()) + corner.x()) {
				inside = !inside;
			}
			before = corner;
		}
		return inside;
	}

	private static double distance(Point point, Point from, Point to) {
		double dx = to.x() - from.x();
		double dy = to.y() - from.y();
		double square = dx * dx + dy * dy;
		double share = square == 0 ? 0
				: Math.clamp(((point.x() - from.x()) * dx + (point.y() - from.y()) * dy) / square, 0, 1);
		return point.distance(from.plus(share * dx, share * dy));
	}
}
