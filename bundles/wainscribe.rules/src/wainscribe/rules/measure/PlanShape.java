// SPDX-License-Identifier: EPL-2.0
package wainscribe.rules.measure;

import java.util.List;

import wainscribe.model.length.Length;

/** A convex patch of floor, a line or a point, on the plan of a room. Coordinates are units of 1/8000 mm. */
public final class PlanShape {

	private final List<double[]> corners;

	PlanShape(List<double[]> corners) {
		this.corners = List.copyOf(corners);
	}

	/** Returns the shortest distance over the floor to another shape; zero where they touch or overlap. */
	public Length distanceTo(PlanShape other) {
		return meets(other) ? Length.ZERO : new Length(Math.round(Math.min(cornersTo(other), other.cornersTo(this))));
	}

	/** Tells whether the shapes overlap by more than a touch. */
	public boolean overlaps(PlanShape other) {
		return separation(other) < -0.5;
	}

	private boolean meets(PlanShape other) {
		return separation(other) <= 0;
	}

	/** Greatest separation along the edge directions of both; zero or less if they meet. */
	private double separation(PlanShape other) {
		double most = Double.NEGATIVE_INFINITY;
		for (PlanShape shape : List.of(this, other)) {
			int count = shape.corners.size();
			for (int i = 0; i < count; i++) {
				double[] from = shape.corners.get(i);
				double[] to = shape.corners.get((i + 1) % count);
				double length = Math.hypot(to[0] - from[0], to[1] - from[1]);
				if (length > 0) {
					double dx = (to[0] - from[0]) / length;
					double dy = (to[1] - from[1]) / length;
					most = Math.max(most, Math.max(along(other, dx, dy), along(other, -dy, dx)));
				}
			}
		}
		return most;
	}

	private double along(PlanShape other, double nx, double ny) {
		double low = Double.POSITIVE_INFINITY;
		double high = Double.NEGATIVE_INFINITY;
		for (double[] corner : corners) {
			low = Math.min(low, corner[0] * nx + corner[1] * ny);
			high = Math.max(high, corner[0] * nx + corner[1] * ny);
		}
		double otherLow = Double.POSITIVE_INFINITY;
		double otherHigh = Double.NEGATIVE_INFINITY;
		for (double[] corner : other.corners) {
			otherLow = Math.min(otherLow, corner[0] * nx + corner[1] * ny);
			otherHigh = Math.max(otherHigh, corner[0] * nx + corner[1] * ny);
		}
		return Math.max(otherLow - high, low - otherHigh);
	}

	private double cornersTo(PlanShape other) {
		double least = Double.POSITIVE_INFINITY;
		int count = other.corners.size();
		for (double[] corner : corners) {
			for (int i = 0; i < count; i++) {
				least = Math.min(least, toEdge(corner, other.corners.get(i), other.corners.get((i + 1) % count)));
			}
		}
		return least;
	}

	private static double toEdge(double[] point, double[] from, double[] to) {
		double dx = to[0] - from[0];
		double dy = to[1] - from[1];
		double square = dx * dx + dy * dy;
		double share = square == 0 ? 0 : ((point[0] - from[0]) * dx + (point[1] - from[1]) * dy) / square;
		double held = Math.max(0, Math.min(1, share));
		return Math.hypot(point[0] - from[0] - held * dx, point[1] - from[1] - held * dy);
	}
}
