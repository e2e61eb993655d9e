// SPDX-License-Identifier: EPL-2.0
package wainscribe.benchmarks.general;

import wainscribe.layout.solver.Rank;
import wainscribe.layout.solver.Score;

/**
 * The nine terms of a layout in their order.
 *
 * @param plain          frameable stretches without a frame
 * @param splits         islands made blockers
 * @param anchorsDropped window anchors and bays given up
 * @param near           distances in the warning band
 * @param outOfBand      runs whose frame width leaves its band
 * @param offModule      runs outside the module
 * @param tenths         excess in 0.1 mm
 * @param frames         frames in the room
 * @param gapShift       distance of the gap from the default, units of 1/8000 mm
 */
public record Terms(long plain, long splits, long anchorsDropped, long near, long outOfBand, long offModule, long tenths,
		long frames, long gapShift) {

	/** Returns the terms of a score of the layout solver. */
	public static Terms of(Score score) {
		long rank = score.rank();
		return new Terms(Rank.plain(rank), Rank.splits(rank), Rank.anchorsDropped(rank), Rank.near(rank), Rank.outOfBand(rank),
				Rank.offModule(rank), score.tenths(), score.frames(), score.gapShift());
	}
}
