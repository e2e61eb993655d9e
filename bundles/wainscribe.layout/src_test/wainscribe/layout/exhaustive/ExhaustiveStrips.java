// SPDX-License-Identifier: EPL-2.0
package wainscribe.layout.exhaustive;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

import wainscribe.layout.EffectiveBrief;
import wainscribe.model.Room;
import wainscribe.model.Wall;
import wainscribe.model.length.Length;
import wainscribe.model.length.LengthUnit;

/**
 * Finds the nine terms of the best layout of strips in a small room by trying everything: every number of rows, every set of
 * islands made blockers, every number of fields in every run. Written from the definition alone; shares no code with the
 * solver. Level walls only. For each wall and number of rows, fillings that are not best in the first five terms are left out,
 * as these are sums over walls.
 */
final class ExhaustiveStrips {

	private static final long MM = 8000;

	private final Room room;
	private final EffectiveBrief brief;
	private final boolean aimed;
	private final boolean grid;
	private final long face;
	private final long least;
	private final long bottom;
	private final long top;
	private final long longest;
	private long[] best;

	ExhaustiveStrips(Room room, EffectiveBrief brief) {
		this.room = room;
		this.brief = brief;
		aimed = brief.fixedGap() != null && brief.fixedGap().units() >= Math.max(100 * MM, brief.frame().face().units());
		grid = brief.pattern().equals("boards-and-rails");
		face = brief.frame().face().units();
		least = Math.max(100 * MM, face);
		bottom = brief.base().units();
		top = brief.railTop().minus(brief.rail().face()).units();
		longest = brief.stock().stream().mapToLong(Length::units).max().orElse(1_000_000 * MM);
	}

	/** Returns plain, splits, given up, near, outOfBand, offModule, excess in 0.1 mm, fields and zero. */
	long[] solve() {
		for (int rows = grid ? 2 : 1; rows <= (grid ? 4 : 1); rows++) {
			List<List<ExhaustiveWall.Filling>> walls = new ArrayList<>();
			for (Wall wall : room.getWalls()) {
				walls.add(best(new StripWall(wall, rows).fillings()));
			}
			join(walls, 0, new long[6], new ArrayList<>());
		}
		return best;
	}

	private static List<ExhaustiveWall.Filling> best(List<ExhaustiveWall.Filling> fillings) {
		long[] first = fillings.stream().map(ExhaustiveWall.Filling::terms)
				.min((a, b) -> ExhaustiveRoom.compare(a, b, 5)).orElseThrow();
		return fillings.stream().filter(filling -> ExhaustiveRoom.compare(filling.terms(), first, 5) == 0).toList();
	}

	private void join(List<List<ExhaustiveWall.Filling>> walls, int index, long[] sum, List<long[]> widths) {
		if (index == walls.size()) {
			long[] module = aimed ? aimed(widths) : ExhaustiveRoom.module(widths);
			long[] terms = { sum[0], sum[1], sum[2], sum[3], sum[4], module[0], module[1], sum[5], 0 };
			best = best == null || ExhaustiveRoom.compare(terms, best, 9) < 0 ? terms : best;
			return;
		}
		for (ExhaustiveWall.Filling filling : walls.get(index)) {
			long[] more = sum.clone();
			Arrays.setAll(more, i -> sum[i] + filling.terms()[i]);
			List<long[]> all = new ArrayList<>(widths);
			all.addAll(filling.widths());
			join(walls, index + 1, more, all);
		}
	}

	/** How far widths lie from the one asked for, beyond 12.5 mm; summed as fractions of a common denominator. */
	private long[] aimed(List<long[]> widths) {
		long aim = brief.fixedGap().units();
		long common = 720_720;
		long outside = 0;
		long sum = 0;
		for (long[] width : widths) {
			long away = Math.abs(width[0] * common / width[1] - aim * common) - 100_000 * common;
			outside += away > 0 ? 1 : 0;
			sum += Math.max(0, away);
		}
		return new long[] { outside, (sum + 400 * common) / (800 * common) };
	}

	/** A run with the number of boards at its ends, and whether it is the part under or over an opening. */
	private record Run(long x0, long x1, long low, long high, int left, int right, boolean part) {
	}

	/** One wall with a number of rows. Rectangles are x0, y0, x1, y1. */
	private final class StripWall {

		private final long width;
		private final int rows;
		private final Surveyed surveyed;

		StripWall(Wall wall, int rows) {
			width = wall.getLength().units();
			this.rows = rows;
			surveyed = new Surveyed(wall, brief.material());
		}

		List<ExhaustiveWall.Filling> fillings() {
			List<ExhaustiveWall.Filling> all = new ArrayList<>();
			List<Run> parts = parts();
			List<long[]> open = cut(0, width, bottom, top, List.of());
			List<long[]> splittable = surveyed.islands().stream().filter(i -> i[1] < top && i[3] > bottom)
					.filter(i -> open.stream().anyMatch(run -> i[0] < run[1] && i[2] > run[0])).toList();
			int end = grid ? 1 : 0;
			for (int bits = 0; bits < 1 << splittable.size(); bits++) {
				List<long[]> split = new ArrayList<>();
				for (int i = 0; i < splittable.size(); i++) {
					if ((bits >> i & 1) == 1) {
						split.add(parting(splittable.get(i)));
					}
				}
				List<Run> runs = new ArrayList<>(parts);
				cut(0, width, bottom, top, split).forEach(run -> runs.add(new Run(run[0], run[1], bottom, top, end, end, false)));
				fill(all, runs, 0, new long[] { 0, split.size(), 0, 0, 0, 0 }, new ArrayList<>());
			}
			return all;
		}

		private void fill(List<ExhaustiveWall.Filling> all, List<Run> runs, int index, long[] terms, List<long[]> widths) {
			if (index == runs.size()) {
				all.add(new ExhaustiveWall.Filling(terms, widths));
				return;
			}
			Run run = runs.get(index);
			List<Integer> fits = new ArrayList<>();
			for (int n = grid || run.left() + run.right() > 0 ? 1 : 2; clear(run, n) >= n * least; n++) {
				fits.add(n);
			}
			boolean any = false;
			for (int n : fits) {
				int near = near(run, n);
				if (near >= 0) {
					any = true;
					long[] more = terms.clone();
					more[3] += near;
					more[4] += isOut(run, n) ? 1 : 0;
					more[5] += n;
					List<long[]> counted = new ArrayList<>(widths);
					if (fits.size() > 1) {
						counted.add(new long[] { clear(run, n), n });
					}
					fill(all, runs, index + 1, more, counted);
				}
			}
			if (!any || fits.isEmpty()) {
				long[] more = terms.clone();
				more[run.part() ? 2 : 0] += fits.isEmpty() ? 0 : 1;
				fill(all, runs, index + 1, more, widths);
			}
		}

		private long clear(Run run, int n) {
			return run.x1() - run.x0() - (n - 1 + run.left() + run.right()) * face;
		}

		private boolean isOut(Run run, int n) {
			double w = clear(run, n) / (double) n;
			double low = 0.8 * rowShare() / rows;
			double high = 1.25 * rowShare() / rows;
			if (brief.widthMin() != null || brief.widthMax() != null) {
				low = brief.widthMin() == null ? 0 : brief.widthMin().units();
				high = brief.widthMax() == null ? w : brief.widthMax().units();
			} else if (aimed) {
				return false;
			} else if (!grid) {
				low = brief.units() == LengthUnit.INCH ? 12 * 203_200 : 300 * MM;
				high = low * 3 / 2;
			}
			return w < low || w > high;
		}

		private long rowShare() {
			return top - bottom - (rows - 1) * face;
		}

		/** Returns the near distances of n fields, or -1 if they may not be. */
		private int near(Run run, int n) {
			if (run.high() - run.low() < least || run.high() - run.low() > longest || !run.part() && rowShare() < rows * least) {
				return -1;
			}
			List<long[]> strips = new ArrayList<>();
			long x = run.x0();
			if (run.left() == 1) {
				strips.add(new long[] { x, run.low(), x + face, run.high() });
				x += face;
			}
			for (int i = 0; i < n; i++) {
				long w = clear(run, n) / n + (i < clear(run, n) % n ? 1 : 0);
				x += w;
				if (rows > 1 && w > longest) {
					return -1;
				}
				if (i < n - 1 || run.right() == 1) {
					strips.add(new long[] { x, run.low(), x + face, run.high() });
					x += face;
				}
			}
			if (x != run.x1()) {
				throw new AssertionError("fields and strips do not make up the run");
			}
			addRails(strips, run);
			return count(strips);
		}

		private void addRails(List<long[]> strips, Run run) {
			long y = bottom;
			for (int row = 0; row < rows - 1; row++) {
				y += rowShare() / rows + (row < rowShare() % rows ? 1 : 0);
				if (!run.part() || y >= run.low() + face && y + 2 * face <= run.high()) {
					strips.add(new long[] { run.x0(), y, run.x1(), y + face });
				}
				y += face;
			}
		}

		private int count(List<long[]> strips) {
			int near = 0;
			for (long[] strip : strips) {
				for (long[] island : surveyed.islands()) {
					if (isNearer(strip, island, island[4])) {
						return -1;
					}
					near += island[5] > island[4] && isNearer(strip, island, island[5]) ? 1 : 0;
				}
			}
			return near;
		}

		/** What an island takes out of a run: a stile of a grid stands at its margin, a batten a field away. */
		private long[] parting(long[] island) {
			long d = grid ? Math.max(1, island[4]) : 0;
			return new long[] { island[0] - d, island[1], island[2] + d, island[3] };
		}

		/** At no distance, touching is too near. */
		private boolean isNearer(long[] strip, long[] island, long distance) {
			long d = distance == 0 ? 1 : distance;
			return strip[0] < island[2] + d && strip[2] > island[0] - d && strip[1] < island[3] + d && strip[3] > island[1] - d;
		}

		private List<long[]> cut(long x0, long x1, long low, long high, List<long[]> split) {
			List<long[]> cuts = new ArrayList<>(split);
			surveyed.openings().stream().filter(r -> r[1] < high && r[3] > low).forEach(cuts::add);
			surveyed.others().stream().filter(r -> r[1] < high && r[3] > low).forEach(cuts::add);
			cuts.sort(Comparator.comparingLong(r -> r[0]));
			List<long[]> runs = new ArrayList<>();
			long x = x0;
			for (long[] r : cuts) {
				if (r[0] > x && x < x1) {
					runs.add(new long[] { x, Math.min(r[0], x1) });
				}
				x = Math.max(x, r[2]);
			}
			if (x < x1) {
				runs.add(new long[] { x, x1 });
			}
			return runs;
		}

		private List<Run> parts() {
			long needed = grid ? least + 2 * face : 2 * least + face;
			List<long[]> groups = new ArrayList<>();
			surveyed.openings().stream().filter(r -> r[1] < top && r[3] > bottom && r[0] < width && r[2] > 0)
					.sorted(Comparator.comparingLong(r -> r[0])).forEach(r -> {
						long[] last = groups.isEmpty() ? null : groups.get(groups.size() - 1);
						if (last != null && r[0] - last[2] < needed) {
							groups.set(groups.size() - 1, new long[] { last[0], Math.min(last[1], r[1]), Math.max(last[2], r[2]),
									Math.max(last[3], r[3]) });
						} else {
							groups.add(r);
						}
					});
			List<Run> parts = new ArrayList<>();
			for (long[] group : groups) {
				long x0 = Math.max(0, group[0]);
				long x1 = Math.min(width, group[2]);
				boolean stands = !grid;
				int left = x0 >= needed == stands ? 1 : 0;
				int right = width - x1 >= needed == stands ? 1 : 0;
				addPart(parts, x0, x1, bottom, group[1], left, right);
				addPart(parts, x0, x1, group[3], top, left, right);
			}
			return parts;
		}

		private void addPart(List<Run> parts, long x0, long x1, long low, long high, int left, int right) {
			if (x0 < x1 && high - low >= least) {
				int end = grid ? 1 : 0;
				cut(x0, x1, low, high, List.of()).forEach(run -> parts.add(new Run(run[0], run[1], low, high,
						run[0] == x0 ? left : end, run[1] == x1 ? right : end, true)));
			}
		}
	}
}
