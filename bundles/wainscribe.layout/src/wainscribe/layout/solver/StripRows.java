// SPDX-License-Identifier: EPL-2.0
package wainscribe.layout.solver;

import java.util.ArrayList;
import java.util.List;

/**
 * The level strips that part a tier into rows of equal height. They run at one height through the whole room, so a part of
 * the tier under or over an opening has those that find their place in it, a face away from its edges.
 */
final class StripRows {

	private final Band band;
	private final Line bottom;
	private final Line top;
	private final int rows;
	private final long face;
	private final List<Line> rails = new ArrayList<>();

	StripRows(Band band, int rows, long face) {
		this.band = band;
		this.rows = rows;
		this.face = face;
		bottom = band.isPart() ? band.part().bottom() : band.bottom();
		top = band.isPart() ? band.part().top() : band.top();
		long run = Math.max(bottom.run(), top.run());
		for (int row = 1; row < rows; row++) {
			long left = lowerEdge(row, 0);
			rails.add(new Line(left, lowerEdge(row, run) - left, run));
		}
	}

	private long lowerEdge(int row, long x) {
		long plumb = bottom.plumb(face);
		return bottom.at(x) + Division.of(clearAt(x), rows, 1).left(row, plumb) - plumb;
	}

	/** Returns the height that the rows share at x. */
	long clearAt(long x) {
		return top.at(x) - bottom.at(x) - (rows - 1) * bottom.plumb(face);
	}

	/** Returns the lower edges of the level strips of a run, from below. */
	List<Line> inside(long x0, long x1) {
		return band.isPart() ? rails.stream().filter(rail -> isInside(rail, x0) && isInside(rail, x1)).toList() : rails;
	}

	private boolean isInside(Line rail, long x) {
		return rail.at(x) - band.bottom().at(x) >= face && band.top().at(x) - rail.at(x) - rail.plumb(face) >= face;
	}

	/** Counts the level strips of a run that meet a rectangle. */
	int strips(Box box, long x0, long x1) {
		return (int) inside(x0, x1).stream()
				.filter(rail -> StripFit.isBetween(rail, rail.up(rail.plumb(face)), x0, x1, box)).count();
	}

	/** Returns what lies between two lines. */
	static Quad between(Line lower, Line upper, long x, long width) {
		long y = lower.at(x);
		long over = upper.at(x);
		return new Quad(x, width, y, over - y, lower.at(x + width) - y, upper.at(x + width) - over);
	}
}
