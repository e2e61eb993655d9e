// SPDX-License-Identifier: EPL-2.0
package wainscribe.drawing.elevation;

import java.util.ArrayList;
import java.util.List;

import wainscribe.drawing.Point;
import wainscribe.drawing.Role;
import wainscribe.profile.TrimProfile;
import wainscribe.profile.section.Segment;
import wainscribe.profile.section.Spot;
import wainscribe.profile.section.StraightSegment;

/**
 * The facets of a moulding as seen from the front, each with the shade that light from the upper left gives it.
 *
 * @param facets from the lower (or inner) edge of the face to the upper (or outer) one
 */
record Relief(List<Facet> facets) {

	/** Direction to the light: from the left, from above and from the viewer. */
	private static final double LIGHT_X = -0.45;
	private static final double LIGHT_Y = 0.55;
	private static final double LIGHT_Z = 0.70;
	private static final double NARROWEST = 0.07;
	private static final int CURVE_FACETS = 3;

	/**
	 * A flat strip along a moulding.
	 *
	 * @param from share of the face where it begins
	 * @param to   share of the face where it ends
	 * @param tilt slope of the strip: rise from the wall for each unit along the face
	 */
	record Facet(double from, double to, double tilt) {
	}

	/** A moulding of which only the measures are known: a bevel inside, a flat, a small bevel outside. */
	static final Relief PLAIN = new Relief(List.of(new Facet(0, 0.3, 0.7), new Facet(0.3, 0.8, 0), new Facet(0.8, 1, -0.9)));
	/** A square board. */
	static final Relief FLAT = new Relief(List.of(new Facet(0, 1, 0)));

	static Relief of(TrimProfile profile) {
		double face = profile.face().approximateMillimetres();
		List<Facet> facets = new ArrayList<>();
		for (Segment segment : profile.section().face()) {
			int parts = segment instanceof StraightSegment ? 1 : CURVE_FACETS;
			Spot from = segment.at(0);
			for (int i = 1; i <= parts; i++) {
				Spot to = segment.at((double) i / parts);
				add(facets, face, from.x(), from.y(), to.x(), to.y());
				from = to;
			}
		}
		return facets.isEmpty() ? FLAT : new Relief(List.copyOf(facets));
	}

	/** Adds what can be seen from the front; strips too narrow to be seen join the one before. */
	private static void add(List<Facet> facets, double face, double x0, double y0, double x1, double y1) {
		double from = facets.isEmpty() ? 0 : facets.getLast().to();
		double to = Math.min(1, x1 / face);
		if (to <= from) {
			return;
		}
		double tilt = (y1 - y0) / Math.max(x1 - x0, face * 0.001);
		if (!facets.isEmpty() && to - from < NARROWEST) {
			Facet last = facets.removeLast();
			facets.add(new Facet(last.from(), to, last.tilt()));
		} else {
			facets.add(new Facet(from, to, tilt));
		}
	}

	/**
	 * Returns the shade of a facet.
	 *
	 * @param across unit vector in the elevation from the moulding's lower or inner edge to its upper or outer one
	 */
	static Role shade(Facet facet, Point across) {
		double length = Math.hypot(1, facet.tilt());
		double along = -facet.tilt() / length;
		double light = along * (across.x() * LIGHT_X + across.y() * LIGHT_Y) + LIGHT_Z / length;
		double change = light - LIGHT_Z;
		if (change > 0.12) {
			return Role.RELIEF_BRIGHT;
		}
		if (change > 0.02) {
			return Role.RELIEF_LIGHT;
		}
		if (change > -0.02) {
			return Role.RELIEF_PLAIN;
		}
		return change > -0.3 ? Role.RELIEF_SHADE : Role.RELIEF_DEEP;
	}
}
