// SPDX-License-Identifier: EPL-2.0
package wainscribe.profile.shape;

import java.util.Objects;

import wainscribe.model.length.Length;

/**
 * The measures of a shape.
 *
 * @param width     face width on the wall, above zero
 * @param thickness greatest projection, above zero
 * @param number    further number of the shape; 0 where it has none
 */
public record ShapeSize(Length width, Length thickness, int number) {

	/** Refuses nulls and sizes that are not above zero. */
	public ShapeSize {
		Objects.requireNonNull(width);
		Objects.requireNonNull(thickness);
		if (width.signum() <= 0 || thickness.signum() <= 0) {
			throw new IllegalArgumentException("width and thickness are above zero"); //$NON-NLS-1$
		}
	}

	/** Returns a size in whole millimetres, without a further number. */
	public static ShapeSize ofMillimetres(long width, long thickness) {
		return new ShapeSize(Length.ofMillimetres(width), Length.ofMillimetres(thickness), 0);
	}

	/** Returns the size with another further number. */
	public ShapeSize withNumber(int other) {
		return new ShapeSize(width, thickness, other);
	}

	/** Returns a share of the width, rounded down to an exact length. */
	public Length ofWidth(int percent) {
		return width.times(percent).dividedBy(100);
	}

	/** Returns a share of the thickness, rounded down to an exact length. */
	public Length ofThickness(int percent) {
		return thickness.times(percent).dividedBy(100);
	}
}
