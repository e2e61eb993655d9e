// SPDX-License-Identifier: EPL-2.0
package wainscribe.layout.solver;

import java.util.List;

/**
 * What is asked of strips beside {@link Limits}: their face is that of the moulding, the least width is that of a clear field.
 *
 * @param boardsAtEnds whether a strip stands at both ends of a run
 * @param rows         numbers of rows of fields to choose from, ascending; 1 stands for upright strips alone
 * @param usualLeast   lower end of the usual widths of a field of one row
 * @param usualMost    upper end of them
 * @param aim          width of a field that was asked for, or negative
 */
public record StripSizes(boolean boardsAtEnds, List<Integer> rows, long usualLeast, long usualMost, long aim) {

	/** Copies the list. */
	public StripSizes {
		rows = List.copyOf(rows);
	}

	/** Returns whether rows part the tier, so that fields are wanted square. */
	public boolean isGrid() {
		return rows.get(rows.size() - 1) > 1;
	}
}
