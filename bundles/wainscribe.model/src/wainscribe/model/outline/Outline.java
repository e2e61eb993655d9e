// SPDX-License-Identifier: EPL-2.0
package wainscribe.model.outline;

import java.util.Objects;

import wainscribe.model.length.Length;

/**
 * An upright rectangle in the elevation of a wall, exact.
 *
 * @param x0 left edge
 * @param y0 lower edge
 * @param x1 right edge, not left of {@code x0}
 * @param y1 upper edge, not below {@code y0}
 */
public record Outline(Length x0, Length y0, Length x1, Length y1) {

	/** Refuses nulls and edges in the wrong order. */
	public Outline {
		Objects.requireNonNull(x0);
		Objects.requireNonNull(y0);
		Objects.requireNonNull(x1);
		Objects.requireNonNull(y1);
		if (x1.isLessThan(x0) || y1.isLessThan(y0)) {
			throw new IllegalArgumentException("edges in the wrong order: " + x0 + ", " + y0 + ", " + x1 + ", " + y1); //$NON-NLS-1$ //$NON-NLS-2$ //$NON-NLS-3$ //$NON-NLS-4$
		}
	}

	/** Returns the outline with the given lower left corner and size. */
	public static Outline ofSize(Length x, Length y, Length width, Length height) {
		return new Outline(x, y, x.plus(width), y.plus(height));
	}

	/** Returns the width. */
	public Length width() {
		return x1.minus(x0);
	}

	/** Returns the height. */
	public Length height() {
		return y1.minus(y0);
	}

	/** Returns the outline grown by a margin on all four sides. */
	public Outline grown(Length margin) {
		return new Outline(x0.minus(margin), y0.minus(margin), x1.plus(margin), y1.plus(margin));
	}

	/** Returns the outline grown by other margins left and right, below, and above. */
	public Outline grown(Length sides, Length below, Length above) {
		return new Outline(x0.minus(sides), y0.minus(below), x1.plus(sides), y1.plus(above));
	}

	/** Tells whether the insides overlap; touching edges do not. */
	public boolean overlaps(Outline other) {
		return x0.isLessThan(other.x1) && other.x0.isLessThan(x1) && y0.isLessThan(other.y1) && other.y0.isLessThan(y1);
	}

	/** Tells whether the other lies wholly in this; shared edges count as inside. */
	public boolean contains(Outline other) {
		return !other.x0.isLessThan(x0) && !other.y0.isLessThan(y0) && !other.x1.isMoreThan(x1) && !other.y1.isMoreThan(y1);
	}

	/** Returns the clear distance along x, zero if the outlines stand above each other. */
	public Length clearX(Outline other) {
		return other.x0.minus(x1).max(x0.minus(other.x1)).max(Length.ZERO);
	}

	/** Returns the clear distance along y, zero if the outlines stand beside each other. */
	public Length clearY(Outline other) {
		return other.y0.minus(y1).max(y0.minus(other.y1)).max(Length.ZERO);
	}
}
