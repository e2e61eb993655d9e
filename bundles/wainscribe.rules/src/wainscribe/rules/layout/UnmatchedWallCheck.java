// SPDX-License-Identifier: EPL-2.0
package wainscribe.rules.layout;

import java.util.List;
import java.util.Optional;

import wainscribe.layout.FrameOutline;
import wainscribe.layout.Tier;
import wainscribe.model.Wall;
import wainscribe.model.length.Length;
import wainscribe.rules.RuleCheck;
import wainscribe.rules.RuleContext;
import wainscribe.rules.Subject;
import wainscribe.rules.measure.FrameRow;

/** Finds corners where the frames on the two walls that meet are of clearly different width. */
public final class UnmatchedWallCheck implements RuleCheck {

	private static final int CLOSES_FROM = 3;

	@Override
	public void check(RuleContext context) {
		List<FrameRow> rows = FrameRow.of(context.design());
		List<Wall> walls = context.walls();
		boolean closes = walls.size() >= CLOSES_FROM && !Boolean.TRUE.equals(context.room().getOpen());
		for (int i = 0; i < (closes ? walls.size() : walls.size() - 1); i++) {
			compare(context, rows, walls.get(i), walls.get((i + 1) % walls.size()));
		}
	}

	private static void compare(RuleContext context, List<FrameRow> rows, Wall left, Wall right) {
		Length tolerance = context.length("tolerance"); //$NON-NLS-1$
		for (Tier tier : Tier.values()) {
			Optional<FrameOutline> before = rows.stream().filter(row -> row.wall() == left && row.tier() == tier)
					.reduce((first, second) -> second).filter(row -> row.frames().size() > 1)
					.map(row -> row.frames().getLast());
			Optional<FrameOutline> after = rows.stream().filter(row -> row.wall() == right && row.tier() == tier).findFirst()
					.filter(row -> row.frames().size() > 1).map(row -> row.frames().getFirst());
			if (before.isPresent() && after.isPresent()
					&& before.get().width().minus(after.get().width()).abs().isMoreThan(tolerance)) {
				context.report(Subject.of(left), Messages.UnmatchedWallCheck_Corner, left.getName(), right.getName(),
						before.get().width(), after.get().width(), tolerance);
				return;
			}
		}
	}
}
