// SPDX-License-Identifier: EPL-2.0
package wainscribe.profile;

import java.util.List;

/**
 * A closed section in its own plane, millimetres, floating point because sections are only drawn and measured for paint.
 * <p>
 * x runs along the wall face (0 at the lower edge, up to the face width), y away from the wall. The outline begins at the
 * lower back corner, follows the exposed face and ends at the upper back corner; the back closes it.
 *
 * @param face edges of the exposed face, each starting where the one before ends
 */
public record ProfileSection(List<Edge> face) {

	/** Copies the list. */
	public ProfileSection {
		face = List.copyOf(face);
	}

	/** One edge of a section. */
	public sealed interface Edge permits Line, Arc {
		/** Start, x. */
		double x0();

		/** Start, y. */
		double y0();

		/** End, x. */
		double x1();

		/** End, y. */
		double y1();
	}

	/** A straight edge. */
	public record Line(double x0, double y0, double x1, double y1) implements Edge {
	}

	/**
	 * A circular edge.
	 *
	 * @param cx    centre, x
	 * @param cy    centre, y
	 * @param sweep angle travelled from start to end in radians, positive anticlockwise
	 */
	public record Arc(double x0, double y0, double x1, double y1, double cx, double cy, double sweep) implements Edge {
	}
}
