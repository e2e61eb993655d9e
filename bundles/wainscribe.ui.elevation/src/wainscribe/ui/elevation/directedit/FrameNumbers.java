// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.elevation.directedit;

import java.util.Optional;

import wainscribe.commands.PlaceFramesCommand;
import wainscribe.drawing.Dimension;
import wainscribe.layout.FrameOutline;
import wainscribe.layout.RoomDesign;
import wainscribe.model.Wall;
import wainscribe.model.length.Length;
import wainscribe.model.outline.Outline;
import wainscribe.ui.elevation.Messages;
import wainscribe.ui.elevation.policies.TierFrames;
import wainscribe.ui.elevation.table.FrameKey;

/** The numbers of a frame that can be typed: its edges and its width. Typing one places the frames of its tier. */
final class FrameNumbers {

	private FrameNumbers() {
	}

	/** Returns the number behind a running mark at a frame's edge. */
	static Optional<TypedNumber> of(RoomDesign design, Wall wall, Dimension dimension) {
		return FrameKey.of(design, wall).stream()
				.flatMap(key -> key.in(design).filter(frame -> frame.id().equals(dimension.subject().id()))
						.map(frame -> edge(design, key, frame, dimension)).stream())
				.findFirst();
	}

	/** Returns the width of a frame. */
	static Optional<TypedNumber> width(RoomDesign design, FrameKey key) {
		TierFrames tier = TierFrames.of(design, key);
		return key.in(design).filter(frame -> tier.canBePlaced())
				.map(frame -> new TypedNumber(Messages.DrawnNumbers_Width, frame.width(), length -> sized(tier, frame,
						Outline.ofSize(frame.x(), frame.y(), length, frame.height()))));
	}

	private static TypedNumber edge(RoomDesign design, FrameKey key, FrameOutline frame, Dimension dimension) {
		TierFrames tier = TierFrames.of(design, key);
		Outline outline = FrameKey.outline(frame);
		return new TypedNumber(Messages.DrawnNumbers_Edge, dimension.to(),
				length -> sized(tier, frame, moved(outline, dimension, length)));
	}

	private static Outline moved(Outline outline, Dimension dimension, Length to) {
		if (dimension.axis() == Dimension.Axis.LEVEL) {
			return dimension.to().equals(outline.x0())
					? new Outline(to.min(outline.x1()), outline.y0(), outline.x1(), outline.y1())
					: new Outline(outline.x0(), outline.y0(), to.max(outline.x0()), outline.y1());
		}
		return dimension.to().equals(outline.y0())
				? new Outline(outline.x0(), to.min(outline.y1()), outline.x1(), outline.y1())
				: new Outline(outline.x0(), outline.y0(), outline.x1(), to.max(outline.y0()));
	}

	private static PlaceFramesCommand sized(TierFrames tier, FrameOutline frame, Outline outline) {
		return PlaceFramesCommand.sizing(tier.wall(), tier.placed(), tier.placesWith(frame, outline));
	}
}
