// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.elevation.painting;

import java.util.ArrayList;
import java.util.List;

import wainscribe.drawing.Path;
import wainscribe.drawing.Point;

/** Cuts a line into dashes, because a figure can't be told lengths of dashes in fractions of a pixel. */
final class Dashes {

	private final List<List<Point>> pieces = new ArrayList<>();
	private final List<Double> pattern;
	private final double unit;
	private List<Point> piece = new ArrayList<>();
	private int index;
	private double left;

	private Dashes(List<Double> pattern, double unit) {
		this.pattern = pattern;
		this.unit = unit;
		this.left = pattern.getFirst() * unit;
	}

	/**
	 * Cuts a path.
	 *
	 * @param path    the path
	 * @param pattern lengths of dashes and gaps in turn, all above zero
	 * @param unit    what one of these is in millimetres on the wall
	 * @return the dashes, each with at least two points
	 */
	static List<List<Point>> of(Path path, List<Double> pattern, double unit) {
		Dashes dashes = new Dashes(pattern, unit);
		List<Point> points = new ArrayList<>(path.flattened());
		if (path.closed()) {
			points.add(path.start());
		}
		dashes.piece.add(points.getFirst());
		for (int i = 1; i < points.size(); i++) {
			dashes.walk(points.get(i - 1), points.get(i));
		}
		dashes.end();
		return dashes.pieces;
	}

	private void walk(Point from, Point to) {
		double length = from.distance(to);
		double done = 0;
		while (length - done > left) {
			done += left;
			double share = done / length;
			turn(new Point(from.x() + (to.x() - from.x()) * share, from.y() + (to.y() - from.y()) * share));
		}
		left -= length - done;
		if (isDash()) {
			piece.add(to);
		}
	}

	private void turn(Point at) {
		if (isDash()) {
			piece.add(at);
			end();
		}
		index = (index + 1) % pattern.size();
		left = pattern.get(index) * unit;
		piece = new ArrayList<>();
		if (isDash()) {
			piece.add(at);
		}
	}

	private void end() {
		if (piece.size() > 1) {
			pieces.add(piece);
		}
	}

	private boolean isDash() {
		return index % 2 == 0;
	}
}
