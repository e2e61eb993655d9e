// SPDX-License-Identifier: EPL-2.0
package wainscribe.cutting;

import java.math.BigDecimal;
import java.util.List;
import java.util.Objects;

import wainscribe.model.length.Length;

/**
 * A bar and what is cut from it.
 *
 * @param source    bought or left over
 * @param label     label of the offcut; empty for a bar that is bought
 * @param profile   id of the profile
 * @param length    full length, end trim included
 * @param price     price, zero for an offcut
 * @param pieces    the pieces in the order of cutting, longest first; at least one
 * @param remainder what is left after end trim, pieces and one kerf for each piece; never below zero
 */
public record Bar(BarSource source, String label, String profile, Length length, BigDecimal price, List<PlacedPiece> pieces,
	Length remainder) {

	/** Refuses nulls and copies the list. */
	public Bar {
		Objects.requireNonNull(source, "source"); //$NON-NLS-1$
		Objects.requireNonNull(label, "label"); //$NON-NLS-1$
		Objects.requireNonNull(profile, "profile"); //$NON-NLS-1$
		Objects.requireNonNull(length, "length"); //$NON-NLS-1$
		Objects.requireNonNull(price, "price"); //$NON-NLS-1$
		pieces = List.copyOf(pieces);
		Objects.requireNonNull(remainder, "remainder"); //$NON-NLS-1$
	}
}
