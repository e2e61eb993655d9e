// SPDX-License-Identifier: EPL-2.0
package wainscribe.layout.pattern;

import java.util.List;
import java.util.Optional;

import wainscribe.layout.Tier;

/** Upright battens between base and rail; in every stretch all fields, those at its ends too, are equally wide. */
public final class BattensUnderRail implements WallPattern {

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
		return Optional.of(new StripRhythm(false, 1, 1));
	}
}
