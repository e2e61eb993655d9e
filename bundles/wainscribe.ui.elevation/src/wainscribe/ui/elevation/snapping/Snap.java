// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.elevation.snapping;

import java.util.List;
import java.util.Objects;
import java.util.Optional;

import wainscribe.model.length.Length;

/**
 * Where an edge was drawn to.
 *
 * @param correction what has to be added to what is moved so that an edge lies exactly on the line
 * @param line       the line; empty name for a tape mark
 */
public record Snap(Length correction, SnapLine line) {

	/** Refuses nulls. */
	public Snap {
		Objects.requireNonNull(correction);
		Objects.requireNonNull(line);
	}

	/**
	 * Finds the line nearest to any of some edges.
	 *
	 * @param edges     where the moved edges and axes would be
	 * @param lines     lines to be drawn to
	 * @param tolerance how near an edge has to be
	 * @return the nearest; of equally near ones the first edge's first line
	 */
	public static Optional<Snap> nearest(List<Length> edges, List<SnapLine> lines, Length tolerance) {
		Snap best = null;
		for (Length edge : edges) {
			for (SnapLine line : lines) {
				Length correction = line.at().minus(edge);
				boolean near = !correction.abs().isMoreThan(tolerance);
				if (near && (best == null || correction.abs().isLessThan(best.correction.abs()))) {
					best = new Snap(correction, line);
				}
			}
		}
		return Optional.ofNullable(best);
	}

	/**
	 * Returns what brings an edge to the nearest tape mark.
	 *
	 * @param edge where the edge would be
	 * @param mark distance between tape marks
	 */
	public static Length toMark(Length edge, Length mark) {
		return edge.roundedTo(mark).minus(edge);
	}
}
