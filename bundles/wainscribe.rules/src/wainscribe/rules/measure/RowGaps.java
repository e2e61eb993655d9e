// SPDX-License-Identifier: EPL-2.0
package wainscribe.rules.measure;

import java.util.ArrayList;
import java.util.List;

import wainscribe.layout.FrameOutline;
import wainscribe.layout.RoomDesign;
import wainscribe.model.length.Length;
import wainscribe.model.outline.Outline;
import wainscribe.model.outline.WallShape;

/**
 * The clear distances of one row of frames along the wall. Where a plate, a grille or an accessory stands between two frames
 * and the run was parted for it, the distance counts to its edge.
 */
public final class RowGaps {

	/** What a strip keeps from the small things it has to clear, at most: a run may be parted for one just below it. */
	private static final Length MARGIN = Length.ofMillimetres(25);

	private final FrameRow row;
	private final RoomHeights heights;
	private final Length set;
	private final List<Outline> islands;

	/**
	 * A gap and the frames it touches.
	 *
	 * @param width distance; below zero where frames overlap
	 * @param left  frame at its left, null for an end of the run or a plate
	 * @param right frame at its right, null likewise
	 */
	public record Gap(Length width, FrameOutline left, FrameOutline right) {

		/** Tells whether the gap is beside a frame. */
		public boolean touches(FrameOutline frame) {
			return frame == left || frame == right;
		}
	}

	/** Prepares the gaps of a row. */
	public RowGaps(RoomDesign design, FrameRow row) {
		this.row = row;
		this.heights = new RoomHeights(design);
		this.set = design.layout().gap();
		this.islands = Islands.on(row.wall());
	}

	/**
	 * Returns the gaps from left to right. On a wall with a slope the gap to a thing that ends the run is left out: how far it
	 * reaches into the tier differs from height to height there.
	 *
	 * @param tolerance how far a gap beside a plate may be off the room's gap to count as meant
	 */
	public List<Gap> all(Length tolerance) {
		WallShape shape = WallShape.of(row.wall());
		boolean sloped = shape.isFloorSloped() || shape.isCeilingSloped();
		List<Gap> gaps = new ArrayList<>();
		FrameOutline before = null;
		Length from = row.x0();
		for (FrameOutline frame : row.frames()) {
			if (before != null || !sloped || from.signum() == 0) {
				gaps.addAll(between(from, frame.x(), before, frame, tolerance));
			}
			before = frame;
			from = frame.right();
		}
		if (!sloped || row.x1().equals(shape.length())) {
			gaps.addAll(between(from, row.x1(), before, null, tolerance));
		}
		return gaps;
	}

	private List<Gap> between(Length from, Length to, FrameOutline left, FrameOutline right, Length tolerance) {
		List<Outline> inside = islands.stream().filter(
				island -> !island.x0().isLessThan(from) && !island.x1().isMoreThan(to) && reachesTier(island)).toList();
		List<Gap> parted = parted(inside, from, to, left, right);
		boolean meant = !parted.isEmpty()
				&& parted.stream().allMatch(gap -> !gap.width().minus(set).abs().isMoreThan(tolerance));
		return meant ? parted : List.of(new Gap(to.minus(from), left, right));
	}

	private static List<Gap> parted(List<Outline> inside, Length from, Length to, FrameOutline left, FrameOutline right) {
		List<Gap> gaps = new ArrayList<>();
		if (!inside.isEmpty() && left != null) {
			Length edge = inside.stream().map(Outline::x0).min(Length::compareTo).orElseThrow();
			gaps.add(new Gap(edge.minus(from), left, null));
		}
		if (!inside.isEmpty() && right != null) {
			Length edge = inside.stream().map(Outline::x1).max(Length::compareTo).orElseThrow();
			gaps.add(new Gap(to.minus(edge), null, right));
		}
		return gaps;
	}

	private boolean reachesTier(Outline island) {
		boolean below = heights.lowerEdge(row.wall(), row.tier(), island.x0())
				.map(edge -> edge.min(heights.lowerEdge(row.wall(), row.tier(), island.x1()).orElse(edge)))
				.filter(edge -> !island.y1().plus(MARGIN).isMoreThan(edge)).isPresent();
		boolean above = heights.upperEdge(row.wall(), row.tier(), island.x0())
				.map(edge -> edge.max(heights.upperEdge(row.wall(), row.tier(), island.x1()).orElse(edge)))
				.filter(edge -> !island.y0().minus(MARGIN).isLessThan(edge)).isPresent();
		return !below && !above;
	}
}
