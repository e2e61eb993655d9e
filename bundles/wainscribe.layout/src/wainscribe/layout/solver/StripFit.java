// SPDX-License-Identifier: EPL-2.0
package wainscribe.layout.solver;

import java.util.ArrayList;
import java.util.List;

/**
 * Plain strips between two lines of a wall: where they come, and whether they may.
 * <p>
 * What strips leave of a run is shared by n fields as frames share it; the strip's face stands for the gap. A strip is too
 * near an island when it meets the island's outline grown by its margin on all sides. Level strips run through the whole
 * run, so they count once for each row.
 */
final class StripFit implements RunFit {

	private final Limits limits;
	private final StripSizes sizes;
	private final List<Island> islands;
	private final Band band;
	private final int rows;
	private final StripRows levels;
	private final long face;

	/**
	 * Creates the fit.
	 *
	 * @param rows rows of fields in the whole tier
	 */
	StripFit(Limits limits, StripSizes sizes, List<Island> islands, Band band, int rows) {
		this.limits = limits;
		this.sizes = sizes;
		this.islands = islands;
		this.band = band;
		this.rows = rows;
		face = limits.face();
		levels = new StripRows(band, rows, face);
	}

	private boolean isBoardLeft(long x0) {
		return band.isPart() && x0 == band.x0() ? band.part().boardLeft() : sizes.boardsAtEnds();
	}

	private boolean isBoardRight(long x1) {
		return band.isPart() && x1 == band.x1() ? band.part().boardRight() : sizes.boardsAtEnds();
	}

	/** Returns how many more strips than inner ones a run has. */
	private int endBoards(long x0, long x1) {
		return (isBoardLeft(x0) ? 1 : 0) + (isBoardRight(x1) ? 1 : 0);
	}

	/** Returns the length that n fields share. */
	private long clear(long x0, long x1, int n) {
		return x1 - x0 - (n - 1 + endBoards(x0, x1)) * face;
	}

	/** Upright strips alone are no filling without one of them. */
	@Override
	public int fewest(long x0, long x1) {
		return rows == 1 && endBoards(x0, x1) == 0 ? 2 : 1;
	}

	@Override
	public long shortest(long x0, long x1) {
		int n = fewest(x0, x1);
		return n * limits.least() + (n - 1 + endBoards(x0, x1)) * face;
	}

	@Override
	public int most(long x0, long x1) {
		return isFrameable(x0, x1) ? (int) ((x1 - x0 - (endBoards(x0, x1) - 1) * face) / (limits.least() + face)) : 0;
	}

	@Override
	public long moduleWidth(long x0, long x1, int n) {
		return Module.width(clear(x0, x1, n), n);
	}

	@Override
	public int near(long x0, long x1, int n) {
		if (clear(x0, x1, n) < n * limits.least() || isLow(x0) || isLow(x1) || isTooLong(x0, x1, n)) {
			return ILLEGAL;
		}
		int count = 0;
		for (Island island : islands) {
			int near = near(island, x0, x1, n);
			if (near == ILLEGAL) {
				return ILLEGAL;
			}
			count += near;
		}
		return count;
	}

	private int near(Island island, long x0, long x1, int n) {
		if (strips(island.outline(), Math.max(1, island.margin()), x0, x1, n) > 0) {
			return ILLEGAL;
		}
		return island.warning() > island.margin() ? strips(island.outline(), island.warning(), x0, x1, n) : 0;
	}

	/** Counts the strips that meet an outline grown on all sides. */
	private int strips(Box outline, long margin, long x0, long x1, int n) {
		Box box = outline.grown(margin);
		int count = 0;
		int last = last(x0, x1, n);
		for (int i = Math.max(first(x0), index(box.x0(), x0, x1, n) - 1); i <= last; i++) {
			long left = left(i, x0, x1, n);
			if (left >= box.x1()) {
				break;
			}
			if (left + face > box.x0() && isBetween(band.bottom(), band.top(), left, left + face, box)) {
				count++;
			}
		}
		return count + levels.strips(box, x0, x1);
	}

	/** Strips are numbered by the field at their right; a board at the left end is 0. */
	private int first(long x0) {
		return isBoardLeft(x0) ? 0 : 1;
	}

	private int last(long x0, long x1, int n) {
		return isBoardRight(x1) ? n : n - 1;
	}

	private long left(int i, long x0, long x1, int n) {
		return field(i, x0, x1, n) - face;
	}

	/** Returns the left end of a field, or one face beyond the run for a board at its right end. */
	private long field(int i, long x0, long x1, int n) {
		Division division = Division.of(clear(x0, x1, n), n, 1);
		return x0 + (isBoardLeft(x0) ? face : 0) + division.left(i, face);
	}

	/** Returns about the number of the strip at x. */
	private int index(long x, long x0, long x1, int n) {
		return (int) Math.max(0, Math.min(n, (x - x0) / (clear(x0, x1, n) / n + face + 1)));
	}

	/** Tells whether an upright or level stretch between two lines meets a rectangle that it overlaps along the wall. */
	static boolean isBetween(Line lower, Line upper, long left, long right, Box box) {
		long a = Math.max(left, box.x0());
		long b = Math.min(right, box.x1());
		return a < b && Math.min(lower.at(a), lower.at(b)) < box.y1() && Math.max(upper.at(a), upper.at(b)) > box.y0();
	}

	private long heightAt(long x) {
		return band.top().at(x) - band.bottom().at(x);
	}

	/** A part under or over an opening keeps the rows of its tier, of which it may show a piece. */
	private boolean isLow(long x) {
		return heightAt(x) < limits.least() || !band.isPart() && levels.clearAt(x) < rows * limits.least();
	}

	@Override
	public boolean isTooLong(long x0, long x1, int n) {
		return Math.max(heightAt(x0), heightAt(x1)) > limits.longest() || rows > 1 && (clear(x0, x1, n) + n - 1) / n > limits.longest();
	}

	@Override
	public boolean isOutOfBand(long x0, long x1, int n) {
		long clear = clear(x0, x1, n);
		if (limits.hasWidthWish()) {
			return limits.widthLeast() >= 0 && clear < limits.widthLeast() * n
					|| limits.widthMost() >= 0 && clear > limits.widthMost() * n;
		}
		if (sizes.aim() >= 0) {
			return false;
		}
		if (!sizes.isGrid()) {
			return clear < sizes.usualLeast() * n || clear > sizes.usualMost() * n;
		}
		// A field reads as square from 4 : 5 to 5 : 4; heights are those of both ends together.
		long heights = levels.clearAt(x0) + levels.clearAt(x1);
		return 10 * clear * rows < 4 * heights * n || 8 * clear * rows > 5 * heights * n;
	}

	@Override
	public List<Island> barring(long x0, long x1, int n) {
		return islands.stream().filter(island -> near(island, x0, x1, n) == ILLEGAL).toList();
	}

	@Override
	public List<Island> nearTo(long x0, long x1, int n) {
		return islands.stream().filter(island -> island.warning() > 0 && strips(island.outline(), island.warning(), x0, x1, n) > 0)
				.toList();
	}

	@Override
	public List<Quad> members(long x0, long x1, int n) {
		List<Quad> strips = new ArrayList<>();
		for (int i = first(x0); i <= last(x0, x1, n); i++) {
			strips.add(StripRows.between(band.bottom(), band.top(), left(i, x0, x1, n), face));
		}
		return strips;
	}

	@Override
	public List<Quad> rails(long x0, long x1, int n) {
		Division division = Division.of(clear(x0, x1, n), n, 1);
		List<Quad> rails = new ArrayList<>();
		for (Line rail : levels.inside(x0, x1)) {
			for (int i = 0; i < n; i++) {
				rails.add(StripRows.between(rail, rail.up(rail.plumb(face)), field(i, x0, x1, n), division.width(i)));
			}
		}
		return rails;
	}
}
