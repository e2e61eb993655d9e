// SPDX-License-Identifier: EPL-2.0
package wainscribe.examples.pattern;

import java.util.List;

import wainscribe.layout.Tier;
import wainscribe.layout.pattern.BandEdge;
import wainscribe.layout.pattern.TierBand;
import wainscribe.layout.pattern.TrimHeights;
import wainscribe.layout.pattern.WallPattern;

/**
 * Example of a wall pattern: a rail, and frames only above it.
 * <p>
 * A pattern names bands and says whether a rail runs; runs, gaps and widths are the layout's. An edge is given from the floor
 * line or from the ceiling line and follows it, so stairs and sloped ceilings need nothing here.
 */
public final class FramesOverRail implements WallPattern {

	@Override
	public boolean hasRail() {
		return true;
	}

	@Override
	public List<TierBand> bands(TrimHeights heights) {
		return List.of(new TierBand(Tier.UPPER, BandEdge.aboveFloor(heights.railTop()),
				BandEdge.belowCeiling(heights.crownDrop()), false));
	}
}
