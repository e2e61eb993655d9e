// SPDX-License-Identifier: EPL-2.0
package wainscribe.layout.setout;

import java.util.List;
import java.util.Optional;

import wainscribe.layout.FrameOutline;
import wainscribe.layout.FrameRole;
import wainscribe.layout.RunLayout;
import wainscribe.layout.Tier;
import wainscribe.model.length.Length;
import wainscribe.model.length.LengthUnit;

/**
 * The marks of one run, and the size its frames are cut to.
 *
 * @param tier         the tier
 * @param frames       marks of its frames from left to right
 * @param commonWidth  width all its frames, but for a wide centre, are cut to, rounded once; null where frames were placed by
 *                     hand
 * @param centreWidth  width a wide centre is cut to, rounded once; null where all frames have one width or were placed by hand
 * @param gapRemaining the gap that is left when all frames have that width and all gaps are equal, exact but for a rest under
 *                     1/8000 mm; null where frames were placed by hand
 */
public record RunMarks(Tier tier, List<FrameMarks> frames, Length commonWidth, Length centreWidth,
		Length gapRemaining) {

	/** Copies the list. */
	public RunMarks {
		frames = List.copyOf(frames);
	}

	/**
	 * Returns the width one of the frames is cut to; empty where they were placed by hand.
	 *
	 * @param frame one of {@link #frames()}
	 */
	public Optional<Length> cutWidth(FrameMarks frame) {
		boolean wide = centreWidth != null && frame.equals(frames.get(frames.size() / 2));
		return Optional.ofNullable(wide ? centreWidth : commonWidth);
	}

	/** Returns the width all frames of the run, but for a wide centre, are cut to; empty where they were placed by hand. */
	public Optional<Length> cutWidth() {
		return Optional.ofNullable(commonWidth);
	}

	/** Returns the gap actually left; empty where frames were placed by hand. */
	public Optional<Length> gapLeft() {
		return Optional.ofNullable(gapRemaining);
	}

	/** Returns the marks of a run that has frames. */
	static RunMarks of(RunLayout run, LengthUnit units) {
		List<FrameMarks> marks = run.frames().stream().map(frame -> FrameMarks.of(frame, units)).toList();
		if (run.frames().stream().anyMatch(frame -> frame.role() == FrameRole.PLACED)) {
			return new RunMarks(run.tier(), marks, null, null, null);
		}
		int count = run.frames().size();
		Length narrow = run.frames().getFirst().width();
		Length centre = run.frames().get(count / 2).width();
		if (centre.minus(narrow).isMoreThan(units.tapeMark())) {
			Length cut = narrow.roundedTo(units.tapeMark());
			Length wide = centre.roundedTo(units.tapeMark());
			Length left = run.x1().minus(run.x0()).minus(cut.times(count - 1L)).minus(wide);
			return new RunMarks(run.tier(), marks, cut, wide, left.dividedBy(count + 1L));
		}
		Length widths = run.frames().stream().map(FrameOutline::width).reduce(Length.ZERO, Length::plus);
		Length cut = new Length(widths.roundedTo(units.tapeMark().times(count)).units() / count);
		Length gap = run.x1().minus(run.x0()).minus(cut.times(count)).dividedBy(count + 1L);
		return new RunMarks(run.tier(), marks, cut, null, gap);
	}
}
