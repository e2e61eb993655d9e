// SPDX-License-Identifier: EPL-2.0
package wainscribe.rules.layout;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

import wainscribe.layout.FrameOutline;
import wainscribe.model.length.Length;
import wainscribe.rules.RuleCheck;
import wainscribe.rules.RuleContext;
import wainscribe.rules.Subject;
import wainscribe.rules.measure.EdgeGaps;
import wainscribe.rules.measure.FrameRow;
import wainscribe.rules.measure.RowGaps;
import wainscribe.rules.measure.RowGaps.Gap;

/** Finds runs of frames whose gaps are not all of one width. Names the frame that stands out most. */
public final class UnequalGapCheck implements RuleCheck {

	@Override
	public void check(RuleContext context) {
		EdgeGaps edges = new EdgeGaps(context.design());
		for (FrameRow row : FrameRow.of(context.design())) {
			context.stopIfCancelled();
			if (row.frames().size() > 1 && !beside(context, row)) {
				aboveAndBelow(context, row, edges);
			}
		}
	}

	private static boolean beside(RuleContext context, FrameRow row) {
		Length tolerance = context.length("tolerance"); //$NON-NLS-1$
		List<Gap> gaps = new RowGaps(context.design(), row).all(tolerance);
		List<Length> widths = gaps.stream().map(Gap::width).sorted().toList();
		if (!isUneven(widths, tolerance)) {
			return false;
		}
		Length middle = widths.get(widths.size() / 2);
		FrameOutline worst = row.frames().stream()
				.max(Comparator.comparing(frame -> offset(gaps, frame, middle))).orElseThrow();
		context.report(Subject.of(row.wall(), worst), Messages.UnequalGapCheck_Beside, worst.id(), widths.getFirst(),
				widths.getLast(), tolerance);
		return true;
	}

	private static Length offset(List<Gap> gaps, FrameOutline frame, Length middle) {
		return gaps.stream().filter(gap -> gap.touches(frame)).map(gap -> gap.width().minus(middle).abs())
				.reduce(Length.ZERO, Length::plus);
	}

	private static void aboveAndBelow(RuleContext context, FrameRow row, EdgeGaps edges) {
		Length tolerance = context.length("tolerance"); //$NON-NLS-1$
		List<Length> heights = new ArrayList<>();
		row.frames().forEach(frame -> heights.addAll(edges.of(row, frame)));
		heights.sort(null);
		if (isUneven(heights, tolerance)) {
			Length middle = heights.get(heights.size() / 2);
			FrameOutline worst = row.frames().stream().max(Comparator.comparing(frame -> edges.of(row, frame).stream()
					.map(gap -> gap.minus(middle).abs()).max(Length::compareTo).orElse(Length.ZERO))).orElseThrow();
			context.report(Subject.of(row.wall(), worst), Messages.UnequalGapCheck_AboveAndBelow, worst.id(),
					heights.getFirst(), heights.getLast(), tolerance);
		}
	}

	private static boolean isUneven(List<Length> sorted, Length tolerance) {
		return sorted.size() > 1 && sorted.getLast().minus(sorted.getFirst()).isMoreThan(tolerance);
	}
}
