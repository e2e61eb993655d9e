// SPDX-License-Identifier: EPL-2.0
package wainscribe.layout.setout;

import java.util.Objects;

import wainscribe.model.length.Length;
import wainscribe.model.length.LengthUnit;

/**
 * A mark to put on the wall.
 *
 * @param exact  where it belongs, from the datum
 * @param onTape the nearest mark of the tape; never computed from another rounded mark
 */
public record Mark(Length exact, Length onTape) {

	/** Refuses nulls. */
	public Mark {
		Objects.requireNonNull(exact);
		Objects.requireNonNull(onTape);
	}

	/** Rounds an exact position once to 1/16 in or 1 mm, halves up. */
	public static Mark of(Length exact, LengthUnit units) {
		return new Mark(exact, exact.roundedTo(units.tapeMark()));
	}
}
