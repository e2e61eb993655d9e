// SPDX-License-Identifier: EPL-2.0
package wainscribe.cutting;

import java.util.Objects;

import wainscribe.model.length.Length;

/**
 * A piece on a bar.
 *
 * @param label  label of its {@link PieceDemand}
 * @param length cut length
 */
public record PlacedPiece(String label, Length length) {

	/** Refuses nulls. */
	public PlacedPiece {
		Objects.requireNonNull(label, "label"); //$NON-NLS-1$
		Objects.requireNonNull(length, "length"); //$NON-NLS-1$
	}
}
