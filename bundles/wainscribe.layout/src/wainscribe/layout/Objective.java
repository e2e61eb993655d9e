// SPDX-License-Identifier: EPL-2.0
package wainscribe.layout;

import java.math.BigDecimal;

import wainscribe.model.length.Length;

/**
 * How good a layout is: nine terms, the first difference decides, less is better in each.
 *
 * @param plain          frameable stretches without a frame
 * @param splits         islands made blockers
 * @param anchorsDropped window anchors and bays given up
 * @param near           distances from strips to islands in the warning band
 * @param outOfBand      runs whose frame width leaves its band
 * @param offModule      runs outside the module
 * @param excess         sum of the distances to the module in millimetres, one decimal
 * @param frames         frames in the room; in a pattern of strips the clear fields between them, counted along the wall
 * @param gapShift       distance of the gap from the default
 */
public record Objective(int plain, int splits, int anchorsDropped, int near, int outOfBand, int offModule,
		BigDecimal excess, int frames, Length gapShift) implements Comparable<Objective> {

	@Override
	public int compareTo(Objective other) {
		int[][] terms = { { plain, other.plain }, { splits, other.splits }, { anchorsDropped, other.anchorsDropped },
				{ near, other.near }, { outOfBand, other.outOfBand }, { offModule, other.offModule },
				{ excess.compareTo(other.excess), 0 }, { frames, other.frames },
				{ gapShift.compareTo(other.gapShift), 0 } };
		for (int[] term : terms) {
			if (term[0] != term[1]) {
				return Integer.compare(term[0], term[1]);
			}
		}
		return 0;
	}
}
