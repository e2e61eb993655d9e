// SPDX-License-Identifier: EPL-2.0
package wainscribe.layout.pattern;

import java.util.List;

import wainscribe.layout.Tier;

/** Frames below and above a rail. */
public final class FramesTwoTier implements WallPattern {

	@Override
	public boolean hasRail() {
		return true;
	}

	@Override
	public List<TierBand> bands(TrimHeights heights) {
		return List.of(new TierBand(Tier.LOWER, BandEdge.aboveFloor(heights.baseTop()), BandEdge.aboveFloor(heights.railBottom()), true),
				new TierBand(Tier.UPPER, BandEdge.aboveFloor(heights.railTop()), BandEdge.belowCeiling(heights.crownDrop()), false));
	}
}
