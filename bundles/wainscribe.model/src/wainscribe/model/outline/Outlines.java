// SPDX-License-Identifier: EPL-2.0
package wainscribe.model.outline;

import wainscribe.model.Opening;
import wainscribe.model.OpeningKind;
import wainscribe.model.Placed;
import wainscribe.model.length.Length;

/** Outlines of surveyed things. Unmeasured widths and heights count as nothing. */
public final class Outlines {

	private Outlines() {
	}

	/** Returns the outline of a surveyed thing as it was measured. */
	public static Outline of(Placed placed) {
		return Outline.ofSize(orZero(placed.getX()), orZero(placed.getY()), orZero(placed.getWidth()),
				orZero(placed.getHeight()));
	}

	/**
	 * Returns the outline of an opening with its casing: grown by reveal and casing at both sides and above, a window also
	 * by its apron below (as the casing where it was not measured). Below a door there is no casing.
	 */
	public static Outline cased(Opening opening) {
		Length casing = orZero(opening.getReveal()).plus(orZero(opening.getCasing()));
		Length below = Length.ZERO;
		if (opening.getKind() == OpeningKind.WINDOW) {
			below = opening.getApron() == null ? casing : opening.getApron();
		}
		return of(opening).grown(casing, below, casing);
	}

	private static Length orZero(Length length) {
		return length == null ? Length.ZERO : length;
	}
}
