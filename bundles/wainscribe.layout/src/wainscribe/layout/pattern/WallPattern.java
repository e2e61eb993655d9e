// SPDX-License-Identifier: EPL-2.0
package wainscribe.layout.pattern;

import java.util.List;
import java.util.Optional;

/**
 * Says which bands of the walls of a room take frames or strips, and whether a rail runs round it. The layout does the rest.
 * <p>
 * Contributed through the extension point {@code wainscribe.layout.patterns}, with a public constructor without parameters.
 * Implementations keep no state. The lowest band of a pattern and the one above it count as the two tiers whose runs match.
 */
public interface WallPattern {

	/** Tells whether a rail runs round the room. */
	boolean hasRail();

	/**
	 * Returns the bands, from below.
	 *
	 * @param heights heights of base, rail and crown in the room
	 * @return the bands, each tier once; empty for a treatment without frames and strips
	 */
	List<TierBand> bands(TrimHeights heights);

	/** Tells how the widths of the frames in a run go together; equal frames unless a pattern says otherwise. */
	default Rhythm rhythm() {
		return Rhythm.EQUAL;
	}

	/** Tells how plain strips fill the bands; empty, as by default, for a pattern of frames. */
	default Optional<StripRhythm> strips() {
		return Optional.empty();
	}
}
