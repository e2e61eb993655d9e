// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.properties;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

import org.eclipse.emf.common.command.Command;

import wainscribe.commands.FramePlace;
import wainscribe.commands.PlaceFramesCommand;
import wainscribe.commands.ReleaseFramesCommand;
import wainscribe.layout.FrameOutline;
import wainscribe.layout.RoomDesign;
import wainscribe.layout.WallLayout;
import wainscribe.model.PlacedFrame;
import wainscribe.model.Wall;
import wainscribe.model.outline.Outline;
import wainscribe.model.outline.Outlines;

/**
 * All frames of one tier of a wall, which are placed by hand together or not at all.
 *
 * @param wall   the wall
 * @param frames the frames of the tier; those placed by hand first, in their order
 * @param placed those that are placed by hand
 */
record FrameTier(Wall wall, List<FrameOutline> frames, List<PlacedFrame> placed) {

	/** Finds the tier of a frame by the frame's id. */
	static Optional<FrameTier> of(RoomDesign design, String id) {
		for (WallLayout wall : design.layout().walls()) {
			Optional<FrameOutline> found = wall.frames().filter(frame -> frame.id().equals(id)).findFirst();
			if (found.isPresent()) {
				return Optional.of(of(wall, wall.frames().filter(frame -> frame.tier() == found.get().tier()).toList()));
			}
		}
		return Optional.empty();
	}

	private static FrameTier of(WallLayout wall, List<FrameOutline> frames) {
		List<PlacedFrame> placed = wall.wall().getPlacedFrames().stream()
			.filter(candidate -> frames.stream().anyMatch(frame -> matches(candidate, frame))).toList();
		List<FrameOutline> first = placed.stream()
			.map(candidate -> frames.stream().filter(frame -> matches(candidate, frame)).findFirst().orElseThrow()).toList();
		return new FrameTier(wall.wall(),
			Stream.concat(first.stream(), frames.stream().filter(frame -> !first.contains(frame))).toList(), placed);
	}

	/** Locks all frames where they stand. */
	Command lock() {
		return PlaceFramesCommand.locking(wall, places(null, null));
	}

	/** Lets the room decide again. */
	Command release() {
		return new ReleaseFramesCommand(wall, placed);
	}

	/** Moves one frame, the others stay. */
	Command move(FrameOutline frame, Outline to) {
		return PlaceFramesCommand.moving(wall, placed, places(frame, to));
	}

	/** Sizes one frame, the others stay. */
	Command size(FrameOutline frame, Outline to) {
		return PlaceFramesCommand.sizing(wall, placed, places(frame, to));
	}

	private List<FramePlace> places(FrameOutline changed, Outline to) {
		return frames.stream().map(frame -> new FramePlace(null, frame.equals(changed) ? to : outline(frame))).toList();
	}

	private static Outline outline(FrameOutline frame) {
		return Outline.ofSize(frame.x(), frame.y(), frame.width(), frame.height());
	}

	private static boolean matches(PlacedFrame placed, FrameOutline frame) {
		return Outlines.of(placed).equals(outline(frame));
	}
}
