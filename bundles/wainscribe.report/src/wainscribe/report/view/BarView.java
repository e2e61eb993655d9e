// SPDX-License-Identifier: EPL-2.0
package wainscribe.report.view;

import java.util.List;

/**
 * A bar and what is cut from it.
 *
 * @param number    counts the bars of its list from 1
 * @param what      length and moulding
 * @param source    where it comes from
 * @param remainder what is left over, and whether it is worth keeping
 * @param share     its part of the longest bar, 0 to 1
 * @param trim      the end trim as part of the longest bar
 * @param kerf      the kerf as part of the longest bar
 * @param percent   its part of the longest bar, for style sheets
 * @param pieces    in the order of cutting
 */
public record BarView(int number, String what, String source, String remainder, double share, double trim, double kerf,
		String percent, List<CutView> pieces) {

	/** Copies the pieces. */
	public BarView {
		pieces = List.copyOf(pieces);
	}
}
