// SPDX-License-Identifier: EPL-2.0
package wainscribe.takeoff.cutting;

import java.math.BigDecimal;
import java.util.List;
import java.util.Objects;

import wainscribe.cutting.BarSource;
import wainscribe.model.length.Length;

/**
 * A bar of a home's cutting plan.
 *
 * @param number    counts the bars from 1
 * @param source    bought or left over
 * @param label     label of the offcut; empty for a bar that is bought
 * @param offcut    id of the home's offcut; empty for a bar that is bought or of an accepted plan
 * @param kind      what it is of
 * @param length    its whole length
 * @param price     what it costs; nought for an offcut, null where no price is known
 * @param pieces    in the order of cutting
 * @param remainder what is left after end trim, pieces and one kerf for each
 */
public record PlannedBar(int number, BarSource source, String label, String offcut, StockKind kind, Length length, BigDecimal price,
		List<PlannedPiece> pieces, Length remainder) {

	/** Refuses nulls but for the price; copies the pieces. */
	public PlannedBar {
		Objects.requireNonNull(source);
		Objects.requireNonNull(label);
		Objects.requireNonNull(offcut);
		Objects.requireNonNull(kind);
		Objects.requireNonNull(length);
		Objects.requireNonNull(remainder);
		pieces = List.copyOf(pieces);
	}

	/** Tells whether it has to be bought. */
	public boolean isBought() {
		return source == BarSource.STOCK;
	}
}
