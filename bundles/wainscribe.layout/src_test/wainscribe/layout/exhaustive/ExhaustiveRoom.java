// SPDX-License-Identifier: EPL-2.0
package wainscribe.layout.exhaustive;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;

import wainscribe.layout.EffectiveBrief;
import wainscribe.model.Room;
import wainscribe.model.Wall;
import wainscribe.model.length.LengthUnit;

/**
 * Finds the nine terms of the best layout of a small room by trying everything: every gap, every set of anchors kept, every
 * set of islands made blockers, every number of frames in every run. Written from the definition of the layout problem and
 * from nothing else; shares no code with the solver. Level walls only.
 * <p>
 * Walls are put together by brute force after leaving out, for each wall and gap, the fillings that are not best in the first
 * five terms; these terms are sums over walls, so such a filling can be in no best layout. {@link #thorough} leaves out
 * nothing.
 */
final class ExhaustiveRoom {

	private static final long MM = 8000;
	private static final BigInteger TENTH = BigInteger.valueOf(800);

	private final Room room;
	private final EffectiveBrief brief;
	private final boolean thorough;
	private int leastFrames;
	private int mostFrames = Integer.MAX_VALUE;
	private long[] best;

	ExhaustiveRoom(Room room, EffectiveBrief brief, boolean thorough) {
		this.room = room;
		this.brief = brief;
		this.thorough = thorough;
	}

	/** Returns plain, splits, anchorsDropped, near, outOfBand, offModule, excess in 0.1 mm, frames and gapShift in units. */
	long[] solve() {
		boolean inch = brief.units() == LengthUnit.INCH;
		long step = inch ? 203_200 / 16 : MM;
		if (brief.fixedGap() != null) {
			tryGap(brief.fixedGap().units(), inch);
			return best;
		}
		tryGaps(inch ? 203_200 * 11 / 4 : 70 * MM, inch ? 203_200 * 7 / 2 : 90 * MM, step, inch);
		if (best[0] > 0) {
			best = null;
			tryGaps(inch ? 203_200 * 2 : 50 * MM, inch ? 203_200 * 15 / 2 : 190 * MM, step, inch);
		}
		return best;
	}

	/** Returns the terms of the best layout whose number of frames lies in a range, null if there is none. Needs thoroughness. */
	long[] between(int least, int most) {
		leastFrames = least;
		mostFrames = most;
		boolean inch = brief.units() == LengthUnit.INCH;
		if (brief.fixedGap() != null) {
			tryGap(brief.fixedGap().units(), inch);
		} else {
			tryGaps(inch ? 203_200 * 11 / 4 : 70 * MM, inch ? 203_200 * 7 / 2 : 90 * MM, inch ? 203_200 / 16 : MM, inch);
		}
		return best;
	}

	private void tryGaps(long from, long to, long step, boolean inch) {
		for (long gap = from; gap <= to; gap += step) {
			tryGap(gap, inch);
		}
	}

	private void tryGap(long gap, boolean inch) {
		long shift = Math.abs(gap - (inch ? 3 * 203_200 : 80 * MM));
		List<List<ExhaustiveWall.Filling>> walls = new ArrayList<>();
		long[] least = new long[5];
		for (Wall wall : room.getWalls()) {
			List<ExhaustiveWall.Filling> fillings = new ExhaustiveWall(room, wall, brief, gap).fillings();
			long[] first = fillings.get(0).terms();
			for (ExhaustiveWall.Filling filling : fillings) {
				if (compare(filling.terms(), first, 5) < 0) {
					first = filling.terms();
				}
			}
			long[] bar = first;
			for (int i = 0; i < 5; i++) {
				least[i] += bar[i];
			}
			walls.add(thorough ? fillings : fillings.stream().filter(filling -> compare(filling.terms(), bar, 5) == 0).toList());
		}
		if (best == null || compare(least, best, 5) <= 0) {
			join(walls, 0, new long[6], new ArrayList<>(), shift);
		}
	}

	private void join(List<List<ExhaustiveWall.Filling>> walls, int index, long[] sum, List<long[]> widths, long shift) {
		if (index == walls.size()) {
			take(sum, widths, shift);
			return;
		}
		for (ExhaustiveWall.Filling filling : walls.get(index)) {
			long[] more = sum.clone();
			for (int i = 0; i < more.length; i++) {
				more[i] += filling.terms()[i];
			}
			List<long[]> all = new ArrayList<>(widths);
			all.addAll(filling.widths());
			join(walls, index + 1, more, all, shift);
		}
	}

	private void take(long[] sum, List<long[]> widths, long shift) {
		if (sum[5] < leastFrames || sum[5] > mostFrames || best != null && compare(sum, best, 5) > 0) {
			return;
		}
		long[] module = module(widths);
		long[] terms = { sum[0], sum[1], sum[2], sum[3], sum[4], module[0], module[1], sum[5], shift };
		if (best == null || compare(terms, best, 9) < 0) {
			best = terms;
		}
	}

	/** Widths are fractions of units: numerator, denominator. */
	static long[] module(List<long[]> widths) {
		BigInteger common = BigInteger.ONE;
		for (long[] width : widths) {
			BigInteger denominator = BigInteger.valueOf(width[1]);
			common = common.multiply(denominator).divide(common.gcd(denominator));
		}
		List<BigInteger> scaled = new ArrayList<>();
		for (long[] width : widths) {
			scaled.add(BigInteger.valueOf(width[0]).multiply(common).divide(BigInteger.valueOf(width[1])));
		}
		BigInteger window = BigInteger.valueOf(25 * MM).multiply(common);
		long[] least = { 0, 0 };
		boolean first = true;
		for (BigInteger width : scaled) {
			for (BigInteger low : List.of(width, width.subtract(window))) {
				long outside = 0;
				BigInteger excess = BigInteger.ZERO;
				for (BigInteger other : scaled) {
					BigInteger away = low.subtract(other).max(other.subtract(low).subtract(window)).max(BigInteger.ZERO);
					outside += away.signum();
					excess = excess.add(away);
				}
				BigInteger unit = TENTH.multiply(common);
				long tenths = excess.multiply(BigInteger.TWO).add(unit).divide(unit.multiply(BigInteger.TWO)).longValueExact();
				if (first || outside < least[0] || outside == least[0] && tenths < least[1]) {
					least = new long[] { outside, tenths };
					first = false;
				}
			}
		}
		return least;
	}

	static int compare(long[] a, long[] b, int terms) {
		for (int i = 0; i < terms; i++) {
			if (a[i] != b[i]) {
				return Long.compare(a[i], b[i]);
			}
		}
		return 0;
	}
}
