// SPDX-License-Identifier: EPL-2.0
package wainscribe.profile;

import java.util.ArrayList;
import java.util.List;

/**
 * A closed section in its own plane, millimetres, floating point because sections are only drawn and measured for paint.
 * <p>
 * x runs along the wall face (0 at the lower edge, up to the face width), y away from the wall. The exposed face goes from
 * the lower edge to the upper edge; the back, which lies against wall, floor or ceiling or is hollow behind a sprung
 * moulding, goes from there to where the face began.
 *
 * @param face edges that are seen and painted, each starting where the one before ends
 * @param back edges that are not, from the end of the face to its start
 */
public record ProfileSection(List<Edge> face, List<Edge> back) {

	/** Copies the lists; refuses a section without a face. */
	public ProfileSection {
		face = List.copyOf(face);
		back = List.copyOf(back);
		if (face.isEmpty()) {
			throw new IllegalArgumentException("a section needs at least one edge"); //$NON-NLS-1$
		}
	}

	/**
	 * Creates a section whose back is one straight line from the end of the face to its start.
	 *
	 * @param face edges of the exposed face
	 */
	public ProfileSection(List<Edge> face) {
		this(face, List.of(new Line(face.getLast().x1(), face.getLast().y1(), face.getFirst().x0(), face.getFirst().y0())));
	}

	/** Returns the whole outline, the face and then the back. */
	public List<Edge> outline() {
		List<Edge> all = new ArrayList<>(face);
		all.addAll(back);
		return List.copyOf(all);
	}

	/** Returns the developed length of the exposed face in millimetres. */
	public double girthMillimetres() {
		return face.stream().mapToDouble(Edge::length).sum();
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

		/** Length along the edge. */
		double length();
	}

	/** A straight edge. */
	public record Line(double x0, double y0, double x1, double y1) implements Edge {
		@Override
		public double length() {
			return Math.hypot(x1 - x0, y1 - y0);
		}
	}

	/**
	 * A circular edge.
	 *
	 * @param cx    centre, x
	 * @param cy    centre, y
	 * @param sweep angle travelled from start to end in radians, positive anticlockwise
	 */
	public record Arc(double x0, double y0, double x1, double y1, double cx, double cy, double sweep) implements Edge {

		/** Returns the radius. */
		public double radius() {
			return Math.hypot(x0 - cx, y0 - cy);
		}

		@Override
		public double length() {
			return radius() * Math.abs(sweep);
		}

		/** Returns the point reached after a share of the sweep, 0 at the start and 1 at the end: x, then y. */
		public double[] at(double share) {
			double angle = Math.atan2(y0 - cy, x0 - cx) + sweep * share;
			return new double[] { cx + radius() * Math.cos(angle), cy + radius() * Math.sin(angle) };
		}
	}
}
