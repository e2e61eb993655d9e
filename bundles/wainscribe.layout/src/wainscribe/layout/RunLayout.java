// SPDX-License-Identifier: EPL-2.0
package wainscribe.layout;

import java.util.List;

import wainscribe.model.length.Length;

/**
 * One run or bay and the frames in it, or the stretch that stays plain.
 * <p>
 * The ends include the gaps before the first and after the last frame, so for every run with equal frames the width of a
 * frame is (x1 - x0 - gap x (n + 1)) / n; with a wide centre the division is by the parts of the rhythm. The run of a window anchor or a bay therefore reaches one gap beyond the cased
 * width on both sides, over the gap of its neighbours.
 *
 * @param tier   the tier
 * @param x0     left end of the run, from the wall's left end
 * @param x1     right end
 * @param y0     lower edge of the tier at {@code x0}
 * @param y1     upper edge of the tier at {@code x0}
 * @param frames from left to right; empty when the stretch stays plain
 * @param reason why another number of frames, or none, would not do; empty when nothing needs saying
 */
public record RunLayout(Tier tier, Length x0, Length x1, Length y0, Length y1, List<FrameOutline> frames, String reason) {

	/** Copies the list. */
	public RunLayout {
		frames = List.copyOf(frames);
	}
}
