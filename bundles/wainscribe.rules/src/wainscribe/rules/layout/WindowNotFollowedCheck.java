// SPDX-License-Identifier: EPL-2.0
package wainscribe.rules.layout;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

import wainscribe.layout.FrameOutline;
import wainscribe.layout.Tier;
import wainscribe.layout.WallLayout;
import wainscribe.model.Opening;
import wainscribe.model.OpeningKind;
import wainscribe.model.Wall;
import wainscribe.model.length.Length;
import wainscribe.model.outline.Outline;
import wainscribe.rules.RuleCheck;
import wainscribe.rules.RuleContext;
import wainscribe.rules.Subject;
import wainscribe.rules.measure.RoomHeights;
import wainscribe.rules.measure.SurveyedOutline;
import wainscribe.rules.measure.TierStops;

/**
 * Finds windows above a tier of frames where no frame below has the cased width and its centre. Windows nearer to each other
 * than the gap count as one; a window narrower than a frame may be, or nearer than the gap to the end of the run below it, is
 * let be.
 */
public final class WindowNotFollowedCheck implements RuleCheck {

	/** A window, or several close together, with their casings. */
	private record Group(Opening first, Outline outline) {
	}

	@Override
	public void check(RuleContext context) {
		RoomHeights heights = new RoomHeights(context.design());
		TierStops stops = new TierStops(context.design(), heights);
		for (WallLayout on : context.layout().walls()) {
			List<FrameOutline> frames = on.frames().filter(frame -> frame.tier() == Tier.LOWER).toList();
			for (Group group : groups(context, on.wall(), heights)) {
				if (canBeFollowed(context, on.wall(), group.outline(), stops.of(on.wall(), Tier.LOWER))) {
					check(context, group, frames);
				}
			}
		}
	}

	private static boolean canBeFollowed(RuleContext context, Wall wall, Outline window, List<Outline> stops) {
		Length gap = context.layout().gap();
		Length least = context.length("narrow").max(context.layout().profile().face().times(4)); //$NON-NLS-1$
		boolean inWall = !window.x0().isLessThan(gap) && !wall.getLength().minus(window.x1()).isLessThan(gap);
		return inWall && !window.width().isLessThan(least)
				&& stops.stream().allMatch(stop -> !stop.x0().isLessThan(window.x1().plus(gap))
						|| !window.x0().isLessThan(stop.x1().plus(gap)));
	}

	private static void check(RuleContext context, Group group, List<FrameOutline> frames) {
		Length tolerance = context.length("tolerance"); //$NON-NLS-1$
		Length left = group.outline().x0();
		Length right = group.outline().x1();
		boolean framed = frames.stream().anyMatch(frame -> frame.x().isLessThan(right) && left.isLessThan(frame.right()));
		boolean followed = frames.stream().anyMatch(frame -> !frame.x().minus(left).abs().isMoreThan(tolerance)
				&& !frame.right().minus(right).abs().isMoreThan(tolerance));
		if (framed && !followed) {
			context.report(Subject.of(group.first()), Messages.WindowNotFollowedCheck_Window, Subject.of(group.first()).element(),
					group.outline().width(), left);
		}
	}

	private static List<Group> groups(RuleContext context, Wall wall, RoomHeights heights) {
		List<Opening> windows = wall.getOpenings().stream().filter(opening -> opening.getKind() == OpeningKind.WINDOW)
				.filter(opening -> isAbove(SurveyedOutline.cased(opening), wall, heights))
				.sorted(Comparator.comparing(opening -> SurveyedOutline.cased(opening).x0())).toList();
		List<Group> groups = new ArrayList<>();
		for (Opening window : windows) {
			Outline outline = SurveyedOutline.cased(window);
			if (!groups.isEmpty() && outline.x0().minus(groups.getLast().outline().x1()).isLessThan(context.layout().gap())) {
				Group before = groups.removeLast();
				groups.add(new Group(before.first(), new Outline(before.outline().x0(), before.outline().y0(),
						outline.x1().max(before.outline().x1()), before.outline().y1())));
			} else {
				groups.add(new Group(window, outline));
			}
		}
		return groups;
	}

	private static boolean isAbove(Outline window, Wall wall, RoomHeights heights) {
		return heights.upperEdge(wall, Tier.LOWER, window.x0()).map(edge -> !window.y0().isLessThan(edge)).orElse(false);
	}
}
