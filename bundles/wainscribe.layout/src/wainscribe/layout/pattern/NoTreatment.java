// SPDX-License-Identifier: EPL-2.0
package wainscribe.layout.pattern;

import java.util.List;

/** Walls left as they are. */
public final class NoTreatment implements WallPattern {

	@Override
	public boolean hasRail() {
		return false;
	}

	@Override
	public List<TierBand> bands(TrimHeights heights) {
		return List.of();
	}
}
