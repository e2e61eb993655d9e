// SPDX-License-Identifier: EPL-2.0
package wainscribe.layout;

import wainscribe.model.length.Length;

/**
 * One thing that a layout puts into a tier: a closed frame of moulding, or a single strip.
 * <p>
 * Its edges left and right stand plumb; the lower and the upper edge may climb with a slope.
 */
public sealed interface Member permits FrameOutline, StripOutline {

	/** Returns its name on drawings and cut lists, unique in the room and the same for the same layout. */
	String id();

	/** Returns the tier it stands in. */
	Tier tier();

	/** Returns its left edge, from the wall's left end. */
	Length x();

	/** Returns its lower left corner, from the finished floor at the wall's left end. */
	Length y();

	/** Returns its width, measured level. */
	Length width();

	/** Returns its left edge, measured plumb. */
	Length height();

	/** Returns how far the lower edge climbs to the right; zero when level. */
	Length rise();

	/** Returns how far the upper edge climbs to the right; zero when level. */
	Length riseTop();

	/** Returns the right edge. */
	default Length right() {
		return x().plus(width());
	}

	/** Returns the height of the upper left corner. */
	default Length top() {
		return y().plus(height());
	}

	/** Tells whether it follows a slope. */
	default boolean isRaked() {
		return rise().signum() != 0 || riseTop().signum() != 0;
	}
}
