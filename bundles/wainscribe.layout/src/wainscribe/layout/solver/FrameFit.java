// SPDX-License-Identifier: EPL-2.0
package wainscribe.layout.solver;

import java.util.ArrayList;
import java.util.List;

/**
 * Frames between two lines of a wall at one gap: where they come, and whether they may.
 * <p>
 * A strip is too near an island when it meets the island's outline grown by its margin on all sides, square corners
 * included, unless that grown outline lies wholly in the frame's field. An island with no margin may not be touched.
 */
final class FrameFit implements RunFit {

	private static final long TALL = 800L * 8000;
	private static final int FEWEST_ROUND_CENTRE = 3;

	private final Limits limits;
	private final List<Island> islands;
	private final Line bottom;
	private final Line top;
	private final Line fieldBottom;
	private final Line fieldTop;
	private final long gap;
	private final boolean level;

	/**
	 * Creates the fit.
	 *
	 * @param bottom lower edge of the band
	 * @param top    upper edge of the band
	 */
	FrameFit(Limits limits, List<Island> islands, Line bottom, Line top, long gap, long gapY) {
		this.limits = limits;
		this.islands = islands;
		this.gap = gap;
		this.bottom = bottom.up(bottom.plumb(gapY));
		this.top = top.up(-top.plumb(gapY));
		fieldBottom = this.bottom.up(bottom.plumb(limits.face()));
		fieldTop = this.top.up(-top.plumb(limits.face()));
		level = bottom.isLevel() && top.isLevel();
	}

	/** Returns how high a frame is at x. */
	long heightAt(long x) {
		return top.at(x) - bottom.at(x);
	}

	@Override
	public long shortest(long x0, long x1) {
		return limits.least() + 2 * gap;
	}

	@Override
	public int fewest(long x0, long x1) {
		return 1;
	}

	@Override
	public int most(long x0, long x1) {
		long length = x1 - x0;
		long equal = Math.max(0, (length - gap) / (limits.least() + gap));
		if (limits.rhythm() == 1) {
			return (int) equal;
		}
		long most = (length - gap - (limits.rhythm() - 1) * limits.least()) / (limits.least() + gap);
		return (int) (most < FEWEST_ROUND_CENTRE ? Math.min(1, equal) : most - 1 + most % 2);
	}

	@Override
	public int step() {
		return limits.rhythm() == 1 ? 1 : 2;
	}

	@Override
	public long moduleWidth(long x0, long x1, int n) {
		return Module.width(x1 - x0 - gap * (n + 1), Division.parts(n, limits.rhythm()));
	}

	@Override
	public List<Quad> members(long x0, long x1, int n) {
		Division division = division(x0, x1, n);
		List<Quad> frames = new ArrayList<>(n);
		for (int i = 0; i < n; i++) {
			frames.add(quad(x0 + gap + division.left(i, gap), division.width(i)));
		}
		return frames;
	}

	private Division division(long x0, long x1, int n) {
		return Division.of(x1 - x0 - gap * (n + 1), n, limits.rhythm());
	}

	@Override
	public boolean isTooLong(long x0, long x1, int n) {
		return division(x0, x1, n).widest() > limits.longest();
	}

	/** Returns the frame with the given sides. */
	Quad quad(long x, long width) {
		long y = bottom.at(x);
		long upper = top.at(x);
		return new Quad(x, width, y, upper - y, bottom.at(x + width) - y, top.at(x + width) - upper);
	}

	@Override
	public int near(long x0, long x1, int n) {
		Division division = division(x0, x1, n);
		if (division.width() < limits.least() || division.widest() > limits.longest()) {
			return ILLEGAL;
		}
		long width = division.width();
		if (!fitsHeight(x0 + gap, division.width(0)) || !level && !fitsHeight(x1 - gap - width, width)
				|| !level && division.extra() > 0 && !isShort(division.widest())) {
			return ILLEGAL;
		}
		int count = 0;
		for (Island island : islands) {
			int near = near(island, x0 + gap, division);
			if (near == ILLEGAL) {
				return ILLEGAL;
			}
			count += near;
		}
		return count;
	}

	/** Counts near distances of one frame of a given width, or tells that it may not be. */
	int near(long x, long width) {
		return near(x - gap, x + width + gap, 1);
	}

	/** Counts near distances of a frame that stands whether it may or not. */
	int nearOf(Quad quad) {
		int count = 0;
		for (Island island : islands) {
			if (island.warning() > 0 && isMet(quad, island.outline(), island.warning())) {
				count++;
			}
		}
		return count;
	}

	@Override
	public List<Island> barring(long x0, long x1, int n) {
		Division division = division(x0, x1, n);
		return islands.stream().filter(island -> near(island, x0 + gap, division) == ILLEGAL).toList();
	}

	private int near(Island island, long first, Division division) {
		long left = island.outline().x0() - island.reach();
		long right = island.outline().x1() + island.reach();
		long pitch = division.width() + 1 + gap;
		int count = 0;
		for (int i = (int) Math.max(0, (left - first - division.extra()) / pitch - 1); i < division.n(); i++) {
			long x = first + division.left(i, gap);
			if (x >= right) {
				break;
			}
			long w = division.width(i);
			if (x + w > left) {
				if (isMet(x, w, island.outline(), island.margin())) {
					return ILLEGAL;
				}
				if (island.warning() > island.margin() && isMet(x, w, island.outline(), island.warning())) {
					count++;
				}
			}
		}
		return count;
	}

	private boolean isMet(long x, long width, Box box, long margin) {
		long outside = Math.max(1, margin);
		long xa = Math.max(x, box.x0() - outside);
		long xb = Math.min(x + width, box.x1() + outside);
		if (xa >= xb || Math.min(bottom.at(xa), bottom.at(xb)) >= box.y1() + outside
				|| Math.max(top.at(xa), top.at(xb)) <= box.y0() - outside) {
			return false;
		}
		Box grown = box.grown(margin);
		boolean inField = grown.x0() >= x + limits.face() && grown.x1() <= x + width - limits.face()
				&& grown.y0() >= Math.max(fieldBottom.at(grown.x0()), fieldBottom.at(grown.x1()))
				&& grown.y1() <= Math.min(fieldTop.at(grown.x0()), fieldTop.at(grown.x1()));
		return !inField;
	}

	/** Tells whether a frame's strips come nearer to a rectangle than a margin without holding it in the field. */
	boolean isMet(Quad quad, Box box, long margin) {
		Line lower = new Line(quad.y(), quad.rise(), quad.width());
		Line upper = new Line(quad.y() + quad.height(), quad.riseTop(), quad.width());
		Box moved = new Box(box.x0() - quad.x(), box.y0(), box.x1() - quad.x(), box.y1());
		return new FrameFit(limits, List.of(), lower, upper, 0, 0).isMet(0, quad.width(), moved, margin);
	}

	private boolean fitsHeight(long x, long width) {
		long left = heightAt(x);
		long right = heightAt(x + width);
		return Math.min(left, right) >= limits.least() && Math.max(left, right) <= limits.longest()
				&& (level || isShort(width));
	}

	private boolean isShort(long width) {
		return limits.longest() == Limits.UNLIMITED
				|| bottom.plumb(width) <= limits.longest() && top.plumb(width) <= limits.longest();
	}

	@Override
	public List<Island> nearTo(long x0, long x1, int n) {
		List<Quad> frames = members(x0, x1, n);
		return islands.stream().filter(island -> island.warning() > 0
				&& frames.stream().anyMatch(frame -> isMet(frame, island.outline(), island.warning()))).toList();
	}

	@Override
	public boolean isOutOfBand(long x0, long x1, int n) {
		long total = x1 - x0 - gap * (n + 1);
		int parts = Division.parts(n, limits.rhythm());
		long wide = total * limits.rhythm();
		long narrow = n == 1 ? wide : total;
		if (limits.hasWidthWish()) {
			return limits.widthLeast() >= 0 && narrow < limits.widthLeast() * parts
					|| limits.widthMost() >= 0 && wide > limits.widthMost() * parts;
		}
		long width = narrow / parts;
		return isOutOfProportion(narrow, wide, parts, heights(x0 + gap, width))
				|| !level && isOutOfProportion(narrow, wide, parts, heights(x1 - gap - width, width));
	}

	private long heights(long x, long width) {
		return heightAt(x) + heightAt(x + width);
	}

	/** Widths are in fractions of {@code parts}, heights the sum of a frame's two sides. */
	private static boolean isOutOfProportion(long narrow, long wide, int parts, long heights) {
		if (heights <= 2 * TALL) {
			return 4 * narrow < heights * parts || wide > heights * parts;
		}
		return 6 * narrow < heights * parts || 2 * wide > heights * parts;
	}
}
