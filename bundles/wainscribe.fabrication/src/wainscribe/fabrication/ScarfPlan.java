// SPDX-License-Identifier: EPL-2.0
package wainscribe.fabrication;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

import wainscribe.model.length.Length;

/**
 * Finds where a run is joined that is longer than any length sold: on measured studs with the fewest pieces, the shortest of
 * them as long as can be (`scarf-on-stud`, `single-length-first`: home-building magazine); where the measured studs do not
 * serve, in equal parts.
 *
 * @param studs   centres of the measured studs
 * @param avoided joints of the other runs of the wall, which this one keeps off while it can (`joint-stagger`)
 * @param longest the longest length sold, null if not known
 */
record ScarfPlan(List<Length> studs, Set<Length> avoided, Length longest) {

	/** No piece of a run is shorter than 400 mm (16 in); `joint-stagger`, common practice. */
	private static final Length SHORTEST = Length.ofMillimetres(400);
	private static final int MOST_PIECES = 100;

	/** Measures pieces. */
	interface Measure {

		/**
		 * Returns the long-point length of a piece.
		 *
		 * @param from       left end, from the wall's left end
		 * @param scarfLeft  whether it is joined there
		 * @param to         right end
		 * @param scarfRight whether it is joined there
		 */
		Length longPoint(Length from, boolean scarfLeft, Length to, boolean scarfRight);
	}

	/**
	 * Where to join.
	 *
	 * @param joints  from left to right; empty if one length is enough, or nothing helps
	 * @param onStuds whether they are measured studs
	 */
	record Joints(List<Length> joints, boolean onStuds) {
	}

	/**
	 * A way to come as far as a stud, or to the end.
	 *
	 * @param pieces long-point lengths of its pieces, the shortest first
	 */
	private record Way(List<Length> pieces, List<Length> joints) {

		static final Way START = new Way(List.of(), List.of());

		Way with(Length piece) {
			return new Way(Stream.concat(pieces.stream(), Stream.of(piece)).sorted().toList(), joints);
		}

		Way joinedAt(Length joint) {
			return new Way(pieces, Stream.concat(joints.stream(), Stream.of(joint)).toList());
		}

		/** Fewer pieces are better, then a longer shortest piece, then a longer second shortest and so on. */
		boolean isBetterThan(Way other) {
			if (other == null || pieces.size() != other.pieces.size()) {
				return other == null || pieces.size() < other.pieces.size();
			}
			for (int i = 0; i < pieces.size(); i++) {
				if (!pieces.get(i).equals(other.pieces.get(i))) {
					return pieces.get(i).isMoreThan(other.pieces.get(i));
				}
			}
			return false;
		}
	}

	/** Finds the joints of a run between two places. */
	Joints between(Length x0, Length x1, Measure measure) {
		if (fits(measure.longPoint(x0, false, x1, false))) {
			return new Joints(List.of(), true);
		}
		List<Length> apart = studs.stream().filter(stud -> !avoided.contains(stud)).toList();
		Way way = onStuds(apart, x0, x1, measure);
		if (way == null) {
			way = onStuds(studs, x0, x1, measure);
		}
		return way != null ? new Joints(way.joints(), true) : new Joints(equalParts(x0, x1, measure), false);
	}

	private boolean fits(Length longPoint) {
		return longest == null || !longPoint.isMoreThan(longest);
	}

	private Way onStuds(List<Length> places, Length x0, Length x1, Measure measure) {
		List<Length> inside = places.stream().distinct().sorted()
				.filter(stud -> !stud.minus(x0).isLessThan(SHORTEST) && !x1.minus(stud).isLessThan(SHORTEST)).toList();
		List<Way> best = new ArrayList<>();
		Way whole = null;
		for (int i = 0; i < inside.size(); i++) {
			Length stud = inside.get(i);
			Way way = better(Way.START, measure.longPoint(x0, false, stud, true), null);
			for (int j = 0; j < i; j++) {
				if (!stud.minus(inside.get(j)).isLessThan(SHORTEST)) {
					way = better(best.get(j), measure.longPoint(inside.get(j), true, stud, true), way);
				}
			}
			best.add(way == null ? null : way.joinedAt(stud));
			whole = better(best.get(i), measure.longPoint(stud, true, x1, false), whole);
		}
		return whole;
	}

	/** Returns the better of going on with one more piece and another way; null stands for no way. */
	private Way better(Way before, Length piece, Way than) {
		if (before == null || !fits(piece)) {
			return than;
		}
		Way way = before.with(piece);
		return way.isBetterThan(than) ? way : than;
	}

	private List<Length> equalParts(Length x0, Length x1, Measure measure) {
		for (int parts = 2; parts <= MOST_PIECES; parts++) {
			List<Length> joints = new ArrayList<>();
			boolean allFit = true;
			Length from = x0;
			for (int i = 1; i <= parts && allFit; i++) {
				Length to = i == parts ? x1 : x0.plus(x1.minus(x0).times(i).dividedBy(parts));
				allFit = fits(measure.longPoint(from, i > 1, to, i < parts));
				if (i < parts) {
					joints.add(to);
				}
				from = to;
			}
			if (allFit) {
				return joints;
			}
		}
		return List.of();
	}
}
