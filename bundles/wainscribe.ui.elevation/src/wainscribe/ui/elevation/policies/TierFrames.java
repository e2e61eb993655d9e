// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.elevation.policies;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import wainscribe.commands.FramePlace;
import wainscribe.layout.FrameOutline;
import wainscribe.layout.RoomDesign;
import wainscribe.model.PlacedFrame;
import wainscribe.model.Wall;
import wainscribe.model.outline.Outline;
import wainscribe.ui.elevation.table.FrameKey;

/**
 * The frames of one tier of a wall, which are placed by hand together or not at all.
 *
 * @param wall   the wall
 * @param frames the frames; those placed by hand first, in the order in which the wall keeps them
 * @param placed those placed by hand
 */
public record TierFrames(Wall wall, List<FrameOutline> frames, List<PlacedFrame> placed) {

	/** Returns the tier of a frame as the room is, whatever is being tried. */
	public static TierFrames of(RoomDesign design, FrameKey key) {
		List<FrameOutline> ordered = new ArrayList<>();
		List<PlacedFrame> placed = new ArrayList<>();
		List<FrameOutline> all = new ArrayList<>(FrameKey.frames(design, key.wall(), key.tier()));
		for (PlacedFrame candidate : key.wall().getPlacedFrames()) {
			Optional<FrameOutline> found = all.stream()
					.filter(frame -> FrameKey.placed(key.wall(), frame).filter(candidate::equals).isPresent()).findFirst();
			found.ifPresent(frame -> {
				placed.add(candidate);
				ordered.add(frame);
				all.remove(frame);
			});
		}
		ordered.addAll(all);
		return new TierFrames(key.wall(), ordered, placed);
	}

	/** Tells whether the frames can be placed by hand one beside the other, as if the floor were level. */
	public boolean canBePlaced() {
		return canBeHeld() && frames.stream().noneMatch(FrameOutline::isRaked);
	}

	/** Tells whether there is anything to place by hand; frames on a slope keep it. */
	public boolean canBeHeld() {
		return !frames.isEmpty();
	}

	/** Returns the places of all frames as they are. */
	public List<FramePlace> places() {
		return frames.stream().map(frame -> new FramePlace(null, FrameKey.held(wall, frame))).toList();
	}

	/** Returns the places of all frames, one of them elsewhere: over the floor line at its left edge. */
	public List<FramePlace> placesWith(FrameOutline changed, Outline there) {
		return frames.stream().map(frame -> new FramePlace(null, frame.equals(changed) ? there : FrameKey.held(wall, frame)))
				.toList();
	}

	/** Returns the places of all frames but one. */
	public List<FramePlace> placesWithout(FrameOutline gone) {
		return frames.stream().filter(frame -> !frame.equals(gone)).map(frame -> new FramePlace(null, FrameKey.held(wall, frame)))
				.toList();
	}
}
