// SPDX-License-Identifier: EPL-2.0
package wainscribe.layout;

import java.util.List;
import java.util.stream.Stream;

import wainscribe.model.length.Length;

/**
 * One run or bay and the frames or strips in it, or the stretch that stays plain.
 * <p>
 * The ends include the gaps before the first and after the last frame, so for every run with equal frames the width of a
 * frame is (x1 - x0 - gap x (n + 1)) / n; with a wide centre the division is by the parts of the rhythm. The run of a window anchor or a bay therefore reaches one gap beyond the cased
 * width on both sides, over the gap of its neighbours.
 * <p>
 * In a pattern of strips the ends are those of the stretch itself, and what the strips leave of it is shared equally.
 *
 * @param tier   the tier
 * @param x0     left end of the run, from the wall's left end
 * @param x1     right end
 * @param y0     lower edge of the tier at {@code x0}
 * @param y1     upper edge of the tier at {@code x0}
 * @param frames from left to right; empty when the stretch stays plain or takes strips
 * @param strips upright ones from left to right, then level ones from below, each row from left to right; empty in a
 *               pattern of frames
 * @param reason why another number of frames, or none, would not do; empty when nothing needs saying
 */
public record RunLayout(Tier tier, Length x0, Length x1, Length y0, Length y1, List<FrameOutline> frames,
		List<StripOutline> strips, String reason) {

	/** Copies the lists. */
	public RunLayout {
		frames = List.copyOf(frames);
		strips = List.copyOf(strips);
	}

	/** Creates a run of frames. */
	public RunLayout(Tier tier, Length x0, Length x1, Length y0, Length y1, List<FrameOutline> frames, String reason) {
		this(tier, x0, x1, y0, y1, frames, List.of(), reason);
	}

	/** Returns the same run with another reason. */
	public RunLayout withReason(String other) {
		return new RunLayout(tier, x0, x1, y0, y1, frames, strips, other);
	}

	/** Returns the frames, then the strips. */
	public Stream<Member> members() {
		return Stream.concat(frames.stream(), strips.stream());
	}
}
