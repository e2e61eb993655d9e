// SPDX-License-Identifier: EPL-2.0
package wainscribe.survey.closure;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * A guess which wall was measured wrong.
 * <p>
 * A slip in one length shows as a misclosure along that wall. So each wall in turn is given the length that closes the walk
 * best; the wall for which least is left over, the diagonals included, is the likeliest. Parallel walls explain a misclosure
 * equally well; a diagonal tells them apart.
 *
 * @param wall     index of the wall
 * @param length   the length that would close best, in the unit of the walk
 * @param leftOver what stays unexplained
 */
record WrongWall(int wall, double length, double leftOver) {

	/** Explanations that leave less than this share of the misclosure more than the best count as equally good. */
	private static final double EQUALLY_GOOD = 0.2;

	/** Returns the likeliest wall first, then those that explain the misclosure as well; the longest wall goes first. */
	static List<WrongWall> likeliest(Traverse walk, List<RoomTraverse.Span> diagonals) {
		List<WrongWall> all = new ArrayList<>();
		for (int i = 0; i < walk.courses().size(); i++) {
			WrongWall guess = guess(walk, diagonals, i);
			if (guess.length > 0) {
				all.add(guess);
			}
		}
		double best = all.stream().mapToDouble(WrongWall::leftOver).min().orElse(0);
		double limit = best + EQUALLY_GOOD * walk.misclosure();
		return all.stream().filter(guess -> guess.leftOver <= limit)
				.sorted(Comparator.comparingDouble((WrongWall guess) -> -walk.courses().get(guess.wall).length())).toList();
	}

	private static WrongWall guess(Traverse walk, List<RoomTraverse.Span> diagonals, int wall) {
		Course course = walk.courses().get(wall);
		Traverse.Point end = walk.end();
		double along = (end.north() * course.latitude() + end.east() * course.departure()) / course.length();
		double length = course.length() - along;
		List<Course> courses = new ArrayList<>(walk.courses());
		courses.set(wall, course.withLength(length));
		Traverse corrected = new Traverse(courses);
		double squares = corrected.misclosure() * corrected.misclosure();
		for (RoomTraverse.Span diagonal : diagonals) {
			for (double computed : bothWays(corrected, diagonal)) {
				squares += (computed - diagonal.distance()) * (computed - diagonal.distance());
			}
		}
		return new WrongWall(wall, length, Math.sqrt(squares));
	}

	/** Returns the length of a diagonal by the walls on one side of it and by those on the other. */
	static double[] bothWays(Traverse walk, RoomTraverse.Span diagonal) {
		List<Traverse.Point> corners = walk.corners();
		int first = Math.min(diagonal.from(), diagonal.to());
		int second = Math.max(diagonal.from(), diagonal.to());
		double inside = corners.get(first).to(corners.get(second));
		Traverse.Point end = corners.getLast();
		Traverse.Point from = corners.get(first);
		Traverse.Point onward = new Traverse.Point(end.north() + from.north(), end.east() + from.east());
		return new double[] { inside, corners.get(second).to(onward) };
	}
}
