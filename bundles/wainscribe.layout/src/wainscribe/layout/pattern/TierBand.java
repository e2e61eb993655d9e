// SPDX-License-Identifier: EPL-2.0
package wainscribe.layout.pattern;

import java.util.Objects;

import wainscribe.layout.Tier;

/**
 * A band of every wall that is to be filled with frames or strips.
 *
 * @param tier         which tier it is; a pattern has each tier once
 * @param bottom       its lower edge
 * @param top          its upper edge
 * @param underWindows whether a window wholly above it gets a frame of its cased width below it; strips run on there
 */
public record TierBand(Tier tier, BandEdge bottom, BandEdge top, boolean underWindows) {

	/** Refuses nulls. */
	public TierBand {
		Objects.requireNonNull(tier);
		Objects.requireNonNull(bottom);
		Objects.requireNonNull(top);
	}
}
