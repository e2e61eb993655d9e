// SPDX-License-Identifier: EPL-2.0
package wainscribe.profile;

import java.util.ArrayList;
import java.util.List;

import wainscribe.profile.ProfileSection.Arc;
import wainscribe.profile.ProfileSection.Edge;
import wainscribe.profile.ProfileSection.Line;

/**
 * Draws the face of a section edge by edge, in millimetres and relative to where the pen is.
 * <p>
 * "Hollow" curves bend into the moulding (cove, scotia), "round" ones out of it (ovolo, bead). Curves that run parallel to
 * the wall at one end have a closed form: an arc over the width w and the height h that starts parallel to the wall turns
 * by 2 atan(h / w) on the radius w / sin of that angle.
 */
public final class SectionPath {

	private static final double TINY = 1e-9;

	private final List<Edge> edges = new ArrayList<>();
	private double x;
	private double y;

	/** Puts the pen where the face begins. */
	public SectionPath(double x, double y) {
		this.x = x;
		this.y = y;
	}

	/** Draws a straight edge; nothing where both distances are nought. */
	public SectionPath line(double dx, double dy) {
		if (Math.abs(dx) > TINY || Math.abs(dy) > TINY) {
			edges.add(new Line(x, y, x + dx, y + dy));
			x += dx;
			y += dy;
		}
		return this;
	}

	/** Draws an arc that starts parallel to the wall and ends dx further and dy higher (negative: lower). */
	public SectionPath leaving(double dx, double dy) {
		double angle = 2 * Math.atan2(dy, dx);
		double radius = dx / Math.sin(Math.abs(angle));
		return arc(dx, dy, x, y + Math.copySign(radius, dy), angle);
	}

	/** Draws an arc that ends parallel to the wall, dx further and dy higher (negative: lower). */
	public SectionPath arriving(double dx, double dy) {
		double angle = 2 * Math.atan2(dy, dx);
		double radius = dx / Math.sin(Math.abs(angle));
		return arc(dx, dy, x + dx, y + dy - Math.copySign(radius, dy), -angle);
	}

	/** Draws an ogee: two equal arcs, parallel to the wall at both ends, dx further and dy higher (negative: lower). */
	public SectionPath ogee(double dx, double dy) {
		return leaving(dx / 2, dy / 2).arriving(dx / 2, dy / 2);
	}

	/** Draws a half circle away from the wall that ends dx further at the same height. */
	public SectionPath halfRound(double dx) {
		return arc(dx, 0, x + dx / 2, y, -Math.PI);
	}

	/** Draws an arc with a given centre. */
	public SectionPath arc(double dx, double dy, double cx, double cy, double sweep) {
		edges.add(new Arc(x, y, x + dx, y + dy, cx, cy, sweep));
		x += dx;
		y += dy;
		return this;
	}

	/** Returns the section with a back of one straight line. */
	public ProfileSection section() {
		return new ProfileSection(edges);
	}

	/** Returns the section with a back through the given points: x, y, x, y ... between the end of the face and its start. */
	public ProfileSection section(double... back) {
		SectionPath path = new SectionPath(x, y);
		for (int i = 0; i < back.length; i += 2) {
			path.line(back[i] - path.x, back[i + 1] - path.y);
		}
		Edge first = edges.getFirst();
		path.line(first.x0() - path.x, first.y0() - path.y);
		return new ProfileSection(edges, path.edges);
	}
}
