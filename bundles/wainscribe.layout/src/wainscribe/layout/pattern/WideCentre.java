// SPDX-License-Identifier: EPL-2.0
package wainscribe.layout.pattern;

import java.util.List;

import wainscribe.layout.Tier;

/** Frames between base and rail, in every run a wide one in the middle and narrow ones beside it, 1 : 2 : 1. */
public final class WideCentre implements WallPattern {

	@Override
	public boolean hasRail() {
		return true;
	}

	@Override
	public List<TierBand> bands(TrimHeights heights) {
		return List.of(new TierBand(Tier.LOWER, BandEdge.aboveFloor(heights.baseTop()), BandEdge.aboveFloor(heights.railBottom()), true));
	}

	@Override
	public Rhythm rhythm() {
		return Rhythm.DOUBLE_CENTRE;
	}
}
