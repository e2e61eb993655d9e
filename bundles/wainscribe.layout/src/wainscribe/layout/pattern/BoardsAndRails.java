// SPDX-License-Identifier: EPL-2.0
package wainscribe.layout.pattern;

import java.util.List;
import java.util.Optional;

import wainscribe.layout.Tier;

/**
 * A grid of boards between base and rail: stiles at one pitch, the outer ones against corners and casings, and one to three
 * level boards between them that make rows of one height. Base and rail close the grid below and above.
 */
public final class BoardsAndRails implements WallPattern {

	@Override
	public boolean hasRail() {
		return true;
	}

	@Override
	public List<TierBand> bands(TrimHeights heights) {
		return List.of(new TierBand(Tier.LOWER, BandEdge.aboveFloor(heights.baseTop()), BandEdge.aboveFloor(heights.railBottom()), false));
	}

	@Override
	public Optional<StripRhythm> strips() {
		return Optional.of(new StripRhythm(true, 2, 4));
	}
}
