// SPDX-License-Identifier: EPL-2.0
package wainscribe.survey.closure;

import java.util.ArrayList;
import java.util.List;

import wainscribe.model.Corner;
import wainscribe.model.Diagonal;
import wainscribe.model.Room;
import wainscribe.model.Wall;
import wainscribe.model.outline.CornerAngle;

/**
 * The walls of a room as a walk in plan, in millimetres.
 *
 * @param lengths   of the walls
 * @param angles    inside angle at the right end of each, in degrees
 * @param measured  whether that angle was measured; 90 was taken where not
 * @param diagonals distances measured across the floor
 */
record RoomTraverse(List<Double> lengths, List<Double> angles, List<Boolean> measured, List<Span> diagonals) {

	/** A distance from the left end of one wall to that of another, both by their index. */
	record Span(int from, int to, double distance, Diagonal source) {
	}

	static RoomTraverse of(Room room) {
		List<Double> lengths = new ArrayList<>();
		List<Double> angles = new ArrayList<>();
		List<Boolean> measured = new ArrayList<>();
		for (Wall wall : room.getWalls()) {
			lengths.add(wall.getLength().approximateMillimetres());
			angles.add(CornerAngle.of(wall).doubleValue());
			measured.add(wall.getAngle() != null || isTriangle(wall.getCorner()));
		}
		List<Span> spans = new ArrayList<>();
		for (Diagonal diagonal : room.getDiagonals()) {
			int from = room.getWalls().indexOf(diagonal.getFrom());
			int to = room.getWalls().indexOf(diagonal.getTo());
			if (from >= 0 && to >= 0 && from != to && diagonal.getDistance() != null) {
				spans.add(new Span(from, to, diagonal.getDistance().approximateMillimetres(), diagonal));
			}
		}
		return new RoomTraverse(lengths, angles, measured, spans);
	}

	private static boolean isTriangle(Corner corner) {
		return corner != null && corner.getLegThis() != null && corner.getLegNext() != null && corner.getDiagonal() != null;
	}

	int size() {
		return lengths.size();
	}

	/** Returns the sum of the inside angles less (n - 2) x 180. */
	double angleMiss() {
		return angles.stream().mapToDouble(Double::doubleValue).sum() - (size() - 2) * 180.0;
	}

	/**
	 * Returns the walk with balanced angles, as surveyors balance angles before they look at lengths: what the angles miss is
	 * spread evenly over the corners that were not measured, over all if every one was.
	 */
	Traverse balanced() {
		double miss = angleMiss();
		long unmeasured = measured.stream().filter(each -> !each).count();
		List<Double> balanced = new ArrayList<>();
		for (int i = 0; i < size(); i++) {
			double share = unmeasured == 0 ? miss / size() : measured.get(i) ? 0 : miss / unmeasured;
			balanced.add(angles.get(i) - share);
		}
		return walk(lengths, balanced);
	}

	/** Returns the walk if one corner alone were wrong. */
	Traverse withAngleBlame(int corner) {
		List<Double> others = new ArrayList<>(angles);
		others.set(corner, angles.get(corner) - angleMiss());
		return walk(lengths, others);
	}

	/** Walks clockwise, turning right at inside corners; the first wall leads east. */
	static Traverse walk(List<Double> lengths, List<Double> angles) {
		List<Course> courses = new ArrayList<>();
		double azimuth = 90;
		for (int i = 0; i < lengths.size(); i++) {
			courses.add(new Course(lengths.get(i), azimuth));
			azimuth += 180 - angles.get(i);
		}
		return new Traverse(courses);
	}
}
