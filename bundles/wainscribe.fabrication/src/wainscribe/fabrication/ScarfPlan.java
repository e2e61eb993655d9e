// SPDX-License-Identifier: EPL-2.0
package wainscribe.fabrication;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;

import wainscribe.model.length.Length;

/**
 * Finds where a run is joined that is longer than any length sold: on measured studs with the fewest pieces, the shortest of
 * them as long as can be (`scarf-on-stud`, `single-length-first`: home-building magazine); where the measured studs do not
 * serve, in equal parts.
 *
 * @param studs   centres of the measured studs
 * @param avoided joints of the other runs of the wall, which this one keeps off while it can (`joint-stagger`)
 */
record ScarfPlan(List<Length> studs, Set<Length> avoided) {

	/** No piece of a run is shorter than 400 mm (16 in); `joint-stagger`, common practice. */
	private static final Length SHORTEST = Length.ofMillimetres(400);
	private static final int MOST_PIECES = 100;

	/** Tells whether a piece can be had. */
	interface Fit {

		/**
		 * Tells whether a piece is not longer than the longest stock.
		 *
		 * @param from      left end, from the wall's left end
		 * @param scarfLeft whether it is joined there
		 * @param to        right end
		 * @param scarfRight whether it is joined there
		 */
		boolean test(Length from, boolean scarfLeft, Length to, boolean scarfRight);
	}

	/**
	 * Where to join.
	 *
	 * @param joints  from left to right; empty if one length is enough, or nothing helps
	 * @param onStuds whether they are measured studs
	 */
	record Joints(List<Length> joints, boolean onStuds) {
	}

	private record Way(int pieces, Length shortest, List<Length> joints) {

		Way with(Length joint, Length piece) {
			List<Length> more = new ArrayList<>(joints);
			more.add(joint);
			return new Way(pieces + 1, shortest.min(piece), more);
		}

		boolean isBetterThan(Way other) {
			return other == null || pieces < other.pieces || pieces == other.pieces && shortest.isMoreThan(other.shortest);
		}
	}

	/** Finds the joints of a run between two places. */
	Joints between(Length x0, Length x1, Fit fit) {
		if (fit.test(x0, false, x1, false)) {
			return new Joints(List.of(), true);
		}
		List<Length> apart = studs.stream().filter(stud -> !avoided.contains(stud)).toList();
		Way way = onStuds(apart, x0, x1, fit);
		if (way == null) {
			way = onStuds(studs, x0, x1, fit);
		}
		return way != null ? new Joints(way.joints(), true) : new Joints(equalParts(x0, x1, fit), false);
	}

	private static Way onStuds(List<Length> places, Length x0, Length x1, Fit fit) {
		List<Length> inside = places.stream().distinct().sorted()
				.filter(stud -> !stud.minus(x0).isLessThan(SHORTEST) && !x1.minus(stud).isLessThan(SHORTEST)).toList();
		List<Way> best = new ArrayList<>();
		Way whole = null;
		for (int i = 0; i < inside.size(); i++) {
			Length stud = inside.get(i);
			Way way = fit.test(x0, false, stud, true) ? new Way(1, stud.minus(x0), List.of(stud)) : null;
			for (int j = 0; j < i; j++) {
				Length piece = stud.minus(inside.get(j));
				if (best.get(j) != null && !piece.isLessThan(SHORTEST) && fit.test(inside.get(j), true, stud, true)) {
					Way longer = best.get(j).with(stud, piece);
					way = longer.isBetterThan(way) ? longer : way;
				}
			}
			best.add(way);
			if (way != null && fit.test(stud, true, x1, false)) {
				Way end = new Way(way.pieces() + 1, way.shortest().min(x1.minus(stud)), way.joints());
				whole = end.isBetterThan(whole) ? end : whole;
			}
		}
		return whole;
	}

	private static List<Length> equalParts(Length x0, Length x1, Fit fit) {
		for (int parts = 2; parts <= MOST_PIECES; parts++) {
			List<Length> joints = new ArrayList<>();
			boolean fits = true;
			Length from = x0;
			for (int i = 1; i <= parts && fits; i++) {
				Length to = i == parts ? x1 : x0.plus(x1.minus(x0).times(i).dividedBy(parts));
				fits = fit.test(from, i > 1, to, i < parts);
				if (i < parts) {
					joints.add(to);
				}
				from = to;
			}
			if (fits) {
				return joints;
			}
		}
		return List.of();
	}
}
