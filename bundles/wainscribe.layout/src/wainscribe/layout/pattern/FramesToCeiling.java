// SPDX-License-Identifier: EPL-2.0
package wainscribe.layout.pattern;

import java.util.List;

import wainscribe.layout.Tier;

/** Frames in one band between base and crown or ceiling, without a rail. */
public final class FramesToCeiling implements WallPattern {

	@Override
	public boolean hasRail() {
		return false;
	}

	@Override
	public List<TierBand> bands(TrimHeights heights) {
		return List.of(new TierBand(Tier.FULL, BandEdge.aboveFloor(heights.baseTop()), BandEdge.belowCeiling(heights.crownDrop()), false));
	}
}
