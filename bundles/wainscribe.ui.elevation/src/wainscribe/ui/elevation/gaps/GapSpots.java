// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.elevation.gaps;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

import wainscribe.layout.FrameOutline;
import wainscribe.layout.FrameRole;
import wainscribe.layout.RoomDesign;
import wainscribe.layout.RunLayout;
import wainscribe.layout.Tier;
import wainscribe.layout.WallLayout;
import wainscribe.model.Wall;
import wainscribe.model.length.Length;
import wainscribe.model.outline.Outline;

/** Finds the gaps of a wall that follow the room's gap: not those round frames placed by hand. */
public final class GapSpots {

	private final Wall wall;
	private final Length gap;
	private final List<GapSpot> spots = new ArrayList<>();

	private GapSpots(Wall wall, Length gap) {
		this.wall = wall;
		this.gap = gap;
	}

	/** Returns the gaps of a wall: beside frames tier by tier from left to right, then those above and below them. */
	public static List<GapSpot> of(RoomDesign design, Wall wall) {
		GapSpots found = new GapSpots(wall, design.layout().gap());
		design.layout().of(wall).ifPresent(found::collect);
		return List.copyOf(found.spots);
	}

	/** Finds the gap at a point of the elevation. */
	public static Optional<GapSpot> at(RoomDesign design, Wall wall, Length x, Length y) {
		return of(design, wall).stream().filter(spot -> spot.contains(x, y)).findFirst();
	}

	/** Returns the gaps that touch a frame. */
	public static List<GapSpot> round(RoomDesign design, Wall wall, FrameOutline frame) {
		return of(design, wall).stream().filter(spot -> touches(spot, frame)).toList();
	}

	private static boolean touches(GapSpot spot, FrameOutline frame) {
		Outline area = spot.area();
		if (spot.upright()) {
			return area.x0().equals(frame.x()) && (area.y1().equals(frame.y()) || area.y0().equals(frame.top()));
		}
		boolean beside = area.x1().equals(frame.x()) || area.x0().equals(frame.right());
		return beside && area.y0().isLessThan(frame.top()) && area.y1().isMoreThan(frame.y());
	}

	private void collect(WallLayout layout) {
		Arrays.stream(Tier.values()).forEach(tier -> between(layout, tier));
		layout.runs().forEach(this::ends);
		layout.runs().forEach(run -> run.frames().stream().filter(GapSpots::follows).filter(frame -> !frame.isRaked())
				.forEach(frame -> aboveAndBelow(run, frame)));
	}

	private static boolean follows(FrameOutline frame) {
		return frame.role() == FrameRole.RUN || frame.role() == FrameRole.ANCHOR;
	}

	private void between(WallLayout layout, Tier tier) {
		List<FrameOutline> frames = layout.frames().filter(frame -> frame.tier() == tier).filter(GapSpots::follows)
				.sorted((one, other) -> one.x().compareTo(other.x())).toList();
		for (int i = 1; i < frames.size(); i++) {
			FrameOutline left = frames.get(i - 1);
			FrameOutline right = frames.get(i);
			if (right.x().minus(left.right()).equals(gap)) {
				add(false, left.right(), left.y().max(right.y()), right.x(), left.top().min(right.top()), GapSpot.Frames.BOTH);
			}
		}
	}

	/** From the corner, casing or fixture at which a run ends to its first and last frame. */
	private void ends(RunLayout run) {
		List<FrameOutline> frames = run.frames().stream().filter(GapSpots::follows)
				.sorted((one, other) -> one.x().compareTo(other.x())).toList();
		if (frames.isEmpty()) {
			return;
		}
		FrameOutline first = frames.getFirst();
		FrameOutline last = frames.getLast();
		if (first.x().minus(run.x0()).equals(gap) && isFree(run.x0(), first)) {
			add(false, run.x0(), first.y(), first.x(), first.top(), GapSpot.Frames.HIGH);
		}
		if (run.x1().minus(last.right()).equals(gap) && isFree(last.right(), last)) {
			add(false, last.right(), last.y(), run.x1(), last.top(), GapSpot.Frames.LOW);
		}
	}

	/** Beside a frame under a window stands the next frame, not the end of a run. */
	private boolean isFree(Length x, FrameOutline frame) {
		return spots.stream().noneMatch(spot -> spot.area().x0().equals(x) && spot.area().y0().isLessThan(frame.top())
				&& spot.area().y1().isMoreThan(frame.y()));
	}

	private void aboveAndBelow(RunLayout run, FrameOutline frame) {
		add(true, frame.x(), run.y0(), frame.right(), frame.y(), GapSpot.Frames.HIGH);
		add(true, frame.x(), frame.top(), frame.right(), run.y1(), GapSpot.Frames.LOW);
	}

	private void add(boolean upright, Length x0, Length y0, Length x1, Length y1, GapSpot.Frames frames) {
		if (x0.isLessThan(x1) && y0.isLessThan(y1)) {
			spots.add(new GapSpot(wall, upright, new Outline(x0, y0, x1, y1), frames));
		}
	}
}
