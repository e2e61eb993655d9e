// SPDX-License-Identifier: EPL-2.0
package wainscribe.rules.measure;

import java.util.List;
import java.util.Objects;

import wainscribe.model.length.Length;
import wainscribe.model.outline.Outline;

/**
 * A convex four-sided patch of wall that a moulding covers: upright, or sheared where it follows a slope. Exact.
 *
 * @param corners its corners in order round the edge
 */
public record Quadrilateral(List<Corner> corners) {

	private static final int COUNT = 4;

	/**
	 * A corner.
	 *
	 * @param x from the wall's left end
	 * @param y from the finished floor at the wall's left end
	 */
	public record Corner(Length x, Length y) {

		/** Refuses nulls. */
		public Corner {
			Objects.requireNonNull(x);
			Objects.requireNonNull(y);
		}
	}

	/** Copies the list and refuses another number of corners. */
	public Quadrilateral {
		corners = List.copyOf(corners);
		if (corners.size() != COUNT) {
			throw new IllegalArgumentException("corners: " + corners.size()); //$NON-NLS-1$
		}
	}

	/** Returns an upright rectangle. */
	public static Quadrilateral of(Outline outline) {
		return upright(outline.x0(), outline.x1(), outline.y0(), outline.y0(), outline.y1(), outline.y1());
	}

	/** Returns a patch with plumb sides whose lower and upper edges may slope. */
	public static Quadrilateral upright(Length left, Length right, Length lowerLeft, Length lowerRight, Length upperLeft,
			Length upperRight) {
		return new Quadrilateral(List.of(new Corner(left, lowerLeft), new Corner(right, lowerRight),
				new Corner(right, upperRight), new Corner(left, upperLeft)));
	}

	/**
	 * Returns the margin that an outline keeps from this patch: by how much it could grow on all four sides until it touches an
	 * upright edge, and the distance square to a sloped one. By separating axes: two convex shapes are apart exactly if one of
	 * their edge directions shows it.
	 *
	 * @return zero if they touch or overlap; rounded to 1/8000 mm beside a slope
	 */
	public Length gapTo(Outline outline) {
		return new Length(Math.max(0, separation(outline)));
	}

	/** Tells whether the insides overlap; touching edges do not. */
	public boolean overlaps(Outline outline) {
		return separation(outline) < 0;
	}

	/** Returns the least upright outline that holds this patch. */
	public Outline bounds() {
		Length x0 = corners.get(0).x();
		Length y0 = corners.get(0).y();
		Length x1 = x0;
		Length y1 = y0;
		for (Corner corner : corners) {
			x0 = x0.min(corner.x());
			y0 = y0.min(corner.y());
			x1 = x1.max(corner.x());
			y1 = y1.max(corner.y());
		}
		return new Outline(x0, y0, x1, y1);
	}

	private long separation(Outline outline) {
		long most = Math.max(along(outline, 1, 0), along(outline, 0, 1));
		for (int i = 0; i < COUNT; i++) {
			Corner from = corners.get(i);
			Corner to = corners.get((i + 1) % COUNT);
			long nx = from.y().minus(to.y()).units();
			long ny = to.x().minus(from.x()).units();
			if (nx != 0 && ny != 0) {
				most = Math.max(most, along(outline, nx, ny));
			}
		}
		return most;
	}

	/** Distance in the direction (nx, ny); below zero where they overlap. */
	private long along(Outline outline, long nx, long ny) {
		long lowest = Long.MAX_VALUE;
		long highest = Long.MIN_VALUE;
		for (Corner corner : corners) {
			long at = nx * corner.x().units() + ny * corner.y().units();
			lowest = Math.min(lowest, at);
			highest = Math.max(highest, at);
		}
		long low = nx * (nx < 0 ? outline.x1() : outline.x0()).units() + ny * (ny < 0 ? outline.y1() : outline.y0()).units();
		long high = nx * (nx < 0 ? outline.x0() : outline.x1()).units() + ny * (ny < 0 ? outline.y0() : outline.y1()).units();
		long apart = Math.max(lowest - high, low - highest);
		boolean upright = nx == 0 || ny == 0;
		return upright ? apart / (Math.abs(nx) + Math.abs(ny)) : Math.round(apart / Math.hypot(nx, ny));
	}
}
