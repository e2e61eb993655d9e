// SPDX-License-Identifier: EPL-2.0
package wainscribe.rules.measure;

import java.util.ArrayList;
import java.util.List;

import wainscribe.layout.FrameOutline;
import wainscribe.layout.RoomDesign;
import wainscribe.model.length.Length;
import wainscribe.model.outline.Outline;

/**
 * The clear distances of one row of frames along the wall. Where a plate, a grille or an accessory stands between two frames
 * and the run was parted for it, the distance counts to its edge.
 */
public final class RowGaps {

	/** What a strip keeps from the small things it has to clear, at most: a run may be parted for one just below it. */
	private static final Length MARGIN = Length.ofMillimetres(25);

	private final FrameRow row;
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
		this.set = design.layout().gap();
		this.islands = Islands.on(row.wall());
	}

	/** Returns the gaps from left to right. */
	public List<Gap> all(Length tolerance) {
		List<Gap> gaps = new ArrayList<>();
		FrameOutline before = null;
		Length from = row.x0();
		for (FrameOutline frame : row.frames()) {
			gaps.addAll(between(from, frame.x(), before, frame, tolerance));
			before = frame;
			from = frame.right();
		}
		gaps.addAll(between(from, row.x1(), before, null, tolerance));
		return gaps;
	}

	private List<Gap> between(Length from, Length to, FrameOutline left, FrameOutline right, Length tolerance) {
		FrameOutline beside = left == null ? right : left;
		List<Outline> inside = islands.stream().filter(island -> !island.x0().isLessThan(from) && !island.x1().isMoreThan(to)
				&& island.y0().minus(MARGIN).isLessThan(beside.top()) && beside.y().isLessThan(island.y1().plus(MARGIN)))
				.toList();
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
}
