// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.profile.snapping;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

import wainscribe.model.length.Length;
import wainscribe.profile.section.SectionPoint;

/**
 * Draws a moved point to points, to lines through points, and else to the marks of the grid. Whatever it is drawn to, it is
 * met exactly.
 *
 * @param points other points of the section; none while the designer asks for free movement
 * @param lines  lines through points, those through neighbours first
 * @param reach  how near counts, in millimetres
 * @param mark   distance between the marks of the grid
 */
public record PointSnap(List<SectionPoint> points, List<GuideLine> lines, double reach, Length mark) {

	/** Copies the lists; refuses nulls. */
	public PointSnap {
		points = List.copyOf(points);
		lines = List.copyOf(lines);
		Objects.requireNonNull(mark);
	}

	/**
	 * What became of a point.
	 *
	 * @param point where it is drawn to
	 * @param lines the lines it was drawn to, at most two
	 * @param onto  whether it was drawn onto another point
	 */
	public record Result(SectionPoint point, List<GuideLine> lines, boolean onto) {

		/** Copies the list. */
		public Result {
			lines = List.copyOf(lines);
		}
	}

	/** Returns a snap to marks only. */
	public static PointSnap toMarks(Length mark) {
		return new PointSnap(List.of(), List.of(), 0, mark);
	}

	/**
	 * Collects what a point may be drawn to.
	 *
	 * @param others     points that stay
	 * @param neighbours of these, the points at the other ends of the moved point's segments
	 * @param reach      how near counts, in millimetres
	 * @param mark       distance between the marks of the grid
	 */
	public static PointSnap around(List<SectionPoint> others, List<SectionPoint> neighbours, double reach, Length mark) {
		List<GuideLine> lines = new ArrayList<>();
		for (SectionPoint neighbour : neighbours) {
			for (Heading heading : Heading.values()) {
				lines.add(new GuideLine(neighbour, heading));
			}
		}
		for (SectionPoint other : others) {
			lines.add(new GuideLine(other, Heading.LEVEL));
			lines.add(new GuideLine(other, Heading.PLUMB));
		}
		return new PointSnap(others, lines, reach, mark);
	}

	/** Draws a point to what is near. */
	public Result snap(SectionPoint moved) {
		Optional<SectionPoint> onto = points.stream().filter(point -> distance(point, moved) <= reach)
				.min(Comparator.comparingDouble(point -> distance(point, moved)));
		if (onto.isPresent()) {
			return new Result(onto.get(), List.of(), true);
		}
		List<GuideLine> near = lines.stream().filter(line -> line.distanceTo(moved) <= reach)
				.sorted(Comparator.comparingDouble(line -> line.distanceTo(moved))).toList();
		if (near.isEmpty()) {
			return new Result(new SectionPoint(moved.x().roundedTo(mark), moved.y().roundedTo(mark)), List.of(), false);
		}
		GuideLine first = near.getFirst();
		for (GuideLine second : near) {
			Optional<SectionPoint> met = first.meeting(second).filter(point -> distance(point, moved) <= 2 * reach);
			if (met.isPresent()) {
				return new Result(met.get(), List.of(first, second), false);
			}
		}
		return new Result(first.nearest(moved, mark), List.of(first), false);
	}

	private static double distance(SectionPoint one, SectionPoint other) {
		return one.spot().distanceTo(other.spot());
	}
}
