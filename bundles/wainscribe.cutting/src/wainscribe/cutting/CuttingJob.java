// SPDX-License-Identifier: EPL-2.0
package wainscribe.cutting;

import java.util.List;
import java.util.Objects;

import wainscribe.model.length.Length;

/**
 * What a cutting plan is wanted for.
 * <p>
 * A bar holds pieces if the sum of their lengths plus one kerf between each two of them is not above the bar's length less
 * the end trim. The end trim is taken once off every bar, bought or left over.
 *
 * @param pieces         the pieces needed, of any number of profiles
 * @param stock          what can be bought
 * @param offcuts        what lies there already
 * @param kerf           width of the saw cut, not below zero
 * @param endTrim        taken off every bar before the first piece, not below zero
 * @param shortestOffcut shortest remainder worth keeping, not below zero; does not change the plan
 */
public record CuttingJob(List<PieceDemand> pieces, List<StockLength> stock, List<Offcut> offcuts, Length kerf, Length endTrim,
	Length shortestOffcut) {

	/**
	 * Checks the values and copies the lists.
	 *
	 * @throws IllegalArgumentException if kerf, end trim or shortest offcut is below zero
	 */
	public CuttingJob {
		pieces = List.copyOf(pieces);
		stock = List.copyOf(stock);
		offcuts = List.copyOf(offcuts);
		notNegative(kerf, "kerf"); //$NON-NLS-1$
		notNegative(endTrim, "end trim"); //$NON-NLS-1$
		notNegative(shortestOffcut, "shortest offcut"); //$NON-NLS-1$
	}

	private static void notNegative(Length length, String what) {
		if (Objects.requireNonNull(length, what).signum() < 0) {
			throw new IllegalArgumentException(what + " must not be below zero: " + length); //$NON-NLS-1$
		}
	}
}
