// SPDX-License-Identifier: EPL-2.0
package wainscribe.layout.pattern;

import java.util.List;

import wainscribe.layout.Tier;

/** Frames in one band between base and rail. */
public final class FramesUnderRail implements WallPattern {

	@Override
	public boolean hasRail() {
		return true;
	}

	@Override
	public List<TierBand> bands(TrimHeights heights) {
		return List.of(new TierBand(Tier.LOWER, BandEdge.aboveFloor(heights.baseTop()), BandEdge.aboveFloor(heights.railBottom()), true));
	}
}
