// SPDX-License-Identifier: EPL-2.0
package wainscribe.rules.measure;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

import wainscribe.layout.FrameOutline;
import wainscribe.layout.FrameRole;
import wainscribe.layout.RoomDesign;
import wainscribe.layout.Tier;
import wainscribe.model.Wall;
import wainscribe.model.length.Length;
import wainscribe.model.outline.Outline;

/**
 * The frames that stand side by side in one run of a wall. Runs are found from the survey, not taken from the layout; a frame
 * under a window parts them too.
 *
 * @param wall   the wall
 * @param tier   the tier
 * @param x0     left end of the run
 * @param x1     right end of the run
 * @param frames from left to right, at least one
 */
public record FrameRow(Wall wall, Tier tier, Length x0, Length x1, List<FrameOutline> frames) {

	/** Copies the list. */
	public FrameRow {
		frames = List.copyOf(frames);
	}

	/** Returns all rows of a room, wall by wall. */
	public static List<FrameRow> of(RoomDesign design) {
		TierStops stops = new TierStops(design, new RoomHeights(design));
		List<FrameRow> rows = new ArrayList<>();
		for (Wall wall : design.room().getWalls()) {
			List<FrameOutline> frames = design.layout().of(wall).map(on -> on.frames().toList()).orElse(List.of());
			for (Tier tier : tiers(frames)) {
				rows.addAll(rows(wall, tier, frames, stops.of(wall, tier)));
			}
		}
		return rows;
	}

	private static Set<Tier> tiers(List<FrameOutline> frames) {
		Set<Tier> tiers = new TreeSet<>();
		frames.stream().filter(FrameRow::standsInRow).forEach(frame -> tiers.add(frame.tier()));
		return tiers;
	}

	private static boolean standsInRow(FrameOutline frame) {
		return frame.role() == FrameRole.RUN || frame.role() == FrameRole.PLACED;
	}

	private static List<FrameRow> rows(Wall wall, Tier tier, List<FrameOutline> frames, List<Outline> stops) {
		List<Outline> parting = new ArrayList<>(stops);
		frames.stream().filter(frame -> frame.tier() == tier && frame.role() == FrameRole.ANCHOR)
				.forEach(frame -> parting.add(Outline.ofSize(frame.x(), frame.y(), frame.width(), frame.height())));
		parting.sort(Comparator.comparing(Outline::x0));
		Length end = SurveyedOutline.orZero(wall.getLength());
		parting.add(new Outline(end, Length.ZERO, end, Length.ZERO));
		List<FrameRow> rows = new ArrayList<>();
		Length from = Length.ZERO;
		for (Outline stop : parting) {
			Length left = from;
			List<FrameOutline> inside = frames.stream()
					.filter(frame -> frame.tier() == tier && standsInRow(frame) && centredIn(frame, left, stop.x0()))
					.sorted(Comparator.comparing(FrameOutline::x)).toList();
			if (!inside.isEmpty()) {
				rows.add(new FrameRow(wall, tier, left, stop.x0(), inside));
			}
			from = from.max(stop.x1());
		}
		return rows;
	}

	private static boolean centredIn(FrameOutline frame, Length from, Length to) {
		Length twice = frame.x().plus(frame.right());
		return twice.isMoreThan(from.times(2)) && twice.isLessThan(to.times(2));
	}
}
