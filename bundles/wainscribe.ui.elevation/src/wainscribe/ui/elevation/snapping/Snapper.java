// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.elevation.snapping;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

import wainscribe.model.length.Length;
import wainscribe.model.outline.Outline;

/**
 * Draws moved edges to near lines, exactly, and else to the nearest tape mark.
 *
 * @param lines     lines of the wall; none while the designer asks for free movement
 * @param tolerance how near counts
 * @param mark      distance between tape marks
 */
public record Snapper(SnapLines lines, Length tolerance, Length mark) {

	/** Refuses nulls. */
	public Snapper {
		Objects.requireNonNull(lines);
		Objects.requireNonNull(tolerance);
		Objects.requireNonNull(mark);
	}

	/**
	 * What became of a shift.
	 *
	 * @param shift the shift, corrected
	 * @param plumb the plumb line that was met, null for none
	 * @param level the level line that was met, null for none
	 */
	public record Result(EdgeShift shift, SnapLine plumb, SnapLine level) {
	}

	/**
	 * Corrects a shift so that an edge or, of what is moved as a whole, an axis meets a line.
	 *
	 * @param outline before the shift
	 * @param shift   as the pointer says
	 */
	public Result snap(Outline outline, EdgeShift shift) {
		Outline moved = shift.applyTo(outline);
		boolean whole = shift.isMove();
		List<Length> plumbEdges = edges(shift.left(), moved.x0(), shift.right(), moved.x1(), whole);
		List<Length> levelEdges = edges(shift.bottom(), moved.y0(), shift.top(), moved.y1(), whole);
		Optional<Snap> plumb = Snap.nearest(plumbEdges, lines.plumb(), tolerance);
		Optional<Snap> level = Snap.nearest(levelEdges, lines.level(), tolerance);
		EdgeShift corrected = shift.alongBy(correction(plumb, plumbEdges)).upBy(correction(level, levelEdges));
		return new Result(corrected, plumb.map(Snap::line).orElse(null), level.map(Snap::line).orElse(null));
	}

	/** The first moved edge goes to a tape mark where no line is near. */
	private Length correction(Optional<Snap> snap, List<Length> edges) {
		return snap.map(Snap::correction).orElseGet(() -> edges.isEmpty() ? Length.ZERO : Snap.toMark(edges.getFirst(), mark));
	}

	private static List<Length> edges(Length lowShift, Length low, Length highShift, Length high, boolean whole) {
		List<Length> edges = new ArrayList<>();
		if (lowShift.signum() != 0) {
			edges.add(low);
		}
		if (highShift.signum() != 0) {
			edges.add(high);
		}
		if (whole && !edges.isEmpty()) {
			edges.add(low.plus(high.minus(low).dividedBy(2)));
		}
		return edges;
	}
}
