// SPDX-License-Identifier: EPL-2.0
package wainscribe.rules.measure;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import wainscribe.layout.FrameOutline;
import wainscribe.layout.RoomDesign;
import wainscribe.model.length.Length;
import wainscribe.model.outline.WallShape;

/** The clear distances of frames above and below: to base, rail, crown or ceiling, square to the edge on a slope. */
public final class EdgeGaps {

	private final RoomHeights heights;

	/** Prepares the distances of a room. */
	public EdgeGaps(RoomDesign design) {
		this.heights = new RoomHeights(design);
	}

	/** Returns the distances of a frame of a row at its four corners, as far as they can be measured. */
	public List<Length> of(FrameRow row, FrameOutline frame) {
		WallShape shape = WallShape.of(row.wall());
		boolean underCeiling = switch (row.tier()) {
			case UPPER, FULL -> true;
			case LOWER, UNDER, OVER, EXTRA -> false;
		};
		Length ceilingClimb = shape.ceilingRight().minus(shape.ceilingLeft());
		Length upperClimb = underCeiling ? ceilingClimb : shape.floorRight();
		List<Length> found = new ArrayList<>();
		add(found, heights.lowerEdge(row.wall(), row.tier(), frame.x()).map(edge -> frame.y().minus(edge)),
				shape.floorRight(), shape.length());
		add(found, heights.lowerEdge(row.wall(), row.tier(), frame.right())
				.map(edge -> frame.y().plus(frame.rise()).minus(edge)), shape.floorRight(), shape.length());
		add(found, heights.upperEdge(row.wall(), row.tier(), frame.x()).map(edge -> edge.minus(frame.top())), upperClimb,
				shape.length());
		add(found, heights.upperEdge(row.wall(), row.tier(), frame.right())
				.map(edge -> edge.minus(frame.top().plus(frame.riseTop()))), upperClimb, shape.length());
		return found;
	}

	private static void add(List<Length> found, Optional<Length> plumb, Length climb, Length length) {
		plumb.ifPresent(gap -> found.add(climb.signum() == 0 ? gap : square(gap, climb, length)));
	}

	private static Length square(Length plumb, Length climb, Length length) {
		return new Length(Math.round(plumb.units() * (length.units() / Math.hypot(climb.units(), length.units()))));
	}
}
