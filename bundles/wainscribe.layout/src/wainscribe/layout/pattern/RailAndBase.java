// SPDX-License-Identifier: EPL-2.0
package wainscribe.layout.pattern;

import java.util.List;

/** A rail and a base, no frames. */
public final class RailAndBase implements WallPattern {

	@Override
	public boolean hasRail() {
		return true;
	}

	@Override
	public List<TierBand> bands(TrimHeights heights) {
		return List.of();
	}
}
