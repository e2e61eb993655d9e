// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.elevation.table;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.IntStream;

import wainscribe.layout.FrameOutline;
import wainscribe.layout.RoomDesign;
import wainscribe.layout.Tier;
import wainscribe.model.PlacedFrame;
import wainscribe.model.Wall;
import wainscribe.model.length.Length;
import wainscribe.model.outline.Outline;
import wainscribe.model.outline.Outlines;
import wainscribe.model.outline.WallShape;

/**
 * A frame as the designer points at it: the third of the lower tier of this wall. Frames are computed anew after each edit;
 * the key stays the same, and with it what is selected.
 *
 * @param wall  the wall
 * @param tier  the tier
 * @param index place from left to right in the tier, from 0
 */
public record FrameKey(Wall wall, Tier tier, int index) {

	private static final Comparator<FrameOutline> LEFT_TO_RIGHT = Comparator.comparing(FrameOutline::x)
			.thenComparing(FrameOutline::y);

	/** Refuses nulls. */
	public FrameKey {
		Objects.requireNonNull(wall);
		Objects.requireNonNull(tier);
	}

	/** Returns the keys of all frames of a wall. */
	public static List<FrameKey> of(RoomDesign design, Wall wall) {
		return Arrays.stream(Tier.values())
				.flatMap(tier -> IntStream.range(0, frames(design, wall, tier).size())
						.mapToObj(index -> new FrameKey(wall, tier, index)))
				.toList();
	}

	/** Returns the frames of one tier of a wall from left to right. */
	public static List<FrameOutline> frames(RoomDesign design, Wall wall, Tier tier) {
		return design.layout().of(wall).map(layout -> layout.frames().filter(frame -> frame.tier() == tier)
				.sorted(LEFT_TO_RIGHT).toList()).orElse(List.of());
	}

	/** Finds the frame in a design; empty if the design has fewer. */
	public Optional<FrameOutline> in(RoomDesign design) {
		List<FrameOutline> frames = frames(design, wall, tier);
		return index < frames.size() ? Optional.of(frames.get(index)) : Optional.empty();
	}

	/** Returns the outer edge of a frame's moulding; of a raked frame the upright rectangle round its lower left corner. */
	public static Outline outline(FrameOutline frame) {
		return Outline.ofSize(frame.x(), frame.y(), frame.width(), frame.height());
	}

	/** Returns a frame as a wall keeps frames placed by hand: over the floor line at its left edge. */
	public static Outline held(Wall wall, FrameOutline frame) {
		Length floor = WallShape.of(wall).floorAt(frame.x());
		return Outline.ofSize(frame.x(), frame.y().minus(floor), frame.width(), frame.height());
	}

	/** Finds the frame placed by hand that a frame of the layout stands for. */
	public static Optional<PlacedFrame> placed(Wall wall, FrameOutline frame) {
		Outline outline = held(wall, frame);
		return wall.getPlacedFrames().stream().filter(placed -> Outlines.of(placed).equals(outline)).findFirst();
	}
}
