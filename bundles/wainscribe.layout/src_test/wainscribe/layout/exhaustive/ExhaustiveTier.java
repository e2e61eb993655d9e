// SPDX-License-Identifier: EPL-2.0
package wainscribe.layout.exhaustive;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

import wainscribe.layout.EffectiveBrief;
import wainscribe.model.Box;
import wainscribe.model.BoxType;
import wainscribe.model.Fixture;
import wainscribe.model.HeatSource;
import wainscribe.model.Material;
import wainscribe.model.Opening;
import wainscribe.model.OpeningKind;
import wainscribe.model.Placed;
import wainscribe.model.Wall;
import wainscribe.model.length.Length;

/** One level tier of a wall at one gap, by the definition. Rectangles are {@code x0, y0, x1, y1}. */
final class ExhaustiveTier {

	private static final long MM = 8000;
	private static final Set<String> LARGE = Set.of("toilet", "bidet", "vanity", "basin", "sink", "tub", "shower", "heater",
			"radiator", "cabinet", "range", "cooktop", "hood", "appliance", "fireplace", "mirror", "washer");

	/**
	 * A way to part the tier into runs.
	 *
	 * @param terms plain, splits, anchorsDropped, near, outOfBand, frames of anchors and bays
	 * @param runs  left and right end of each
	 */
	record Parting(long[] terms, List<long[]> runs) {
	}

	private final long gap;
	private final long gapY;
	private final long bottom;
	private final long top;
	private final long width;
	private final long face;
	private final long least;
	private final long longest;
	private final Length wishLow;
	private final Length wishHigh;
	private final boolean anchored;
	/** Widths of a side frame that the middle one has. */
	private final int centre;
	private final List<long[]> openings = new ArrayList<>();
	private final List<Boolean> isWindow = new ArrayList<>();
	private final List<long[]> others = new ArrayList<>();
	/** Rectangle, margin, warning. */
	private final List<long[]> islands = new ArrayList<>();

	ExhaustiveTier(Wall wall, EffectiveBrief brief, long gap, long bottom, long top, boolean anchored,
			int centre) {
		this.centre = centre;
		this.gap = gap;
		this.gapY = brief.fixedGapY() == null ? gap : brief.fixedGapY().units();
		this.bottom = bottom;
		this.top = top;
		this.anchored = anchored;
		width = wall.getLength().units();
		face = brief.frame().face().units();
		least = Math.max(200 * MM, 4 * face);
		longest = brief.stock().stream().mapToLong(Length::units).max().orElse(1_000_000 * MM);
		wishLow = brief.widthMin();
		wishHigh = brief.widthMax();
		boolean burns = brief.material() != Material.PLASTER && brief.material() != Material.METAL;
		for (Opening opening : wall.getOpenings()) {
			addOpening(opening);
		}
		for (Fixture fixture : wall.getFixtures()) {
			addFixture(fixture, burns);
		}
		for (Box box : wall.getBoxes()) {
			if (box.getType() == BoxType.PANEL) {
				others.add(rectangle(box));
			} else {
				addIsland(box, 13, 25);
			}
		}
	}

	private static long units(Length length) {
		return length == null ? 0 : length.units();
	}

	private static long[] rectangle(Placed placed) {
		long x = units(placed.getX());
		long y = units(placed.getY());
		return new long[] { x, y, x + units(placed.getWidth()), y + units(placed.getHeight()) };
	}

	private void addOpening(Opening opening) {
		boolean window = opening.getKind() == OpeningKind.WINDOW;
		long around = units(opening.getCasing()) + units(opening.getReveal());
		long below = !window ? 0 : opening.getApron() == null ? around : units(opening.getApron());
		long[] r = rectangle(opening);
		openings.add(new long[] { r[0] - around, r[1] - below, r[2] + around, r[3] + around });
		isWindow.add(window);
	}

	private void addFixture(Fixture fixture, boolean burns) {
		String type = fixture.getType().getLiteral();
		long[] r = rectangle(fixture);
		if (LARGE.contains(type) && !Boolean.TRUE.equals(fixture.getBehind())) {
			others.add(r);
			if (burns && type.equals("heater") && fixture.getHeat() == HeatSource.ELECTRIC) {
				long x = Math.max(0, 305 * MM - gap);
				long y = Math.max(0, 305 * MM - gapY);
				others.add(new long[] { r[0] - x, r[1] - y, r[2] + x, r[3] + y });
			}
			if (burns && (type.equals("range") || type.equals("cooktop"))) {
				others.add(new long[] { r[0], r[1], r[2], r[3] + Math.max(0, 762 * MM - gapY) });
			}
		} else if (Set.of("grille", "register").contains(type)) {
			addIsland(fixture, 25, 0);
		} else if (Set.of("thermostat", "keypad").contains(type)) {
			addIsland(fixture, 0, 25);
		} else if (Set.of("towel-bar", "towel-ring", "tp-holder", "robe-hook", "sconce", "grab-bar").contains(type)) {
			addIsland(fixture, 0, 10);
		}
	}

	private void addIsland(Placed placed, long margin, long warning) {
		long[] r = rectangle(placed);
		islands.add(new long[] { r[0], r[1], r[2], r[3], margin * MM, warning * MM });
	}

	boolean isFrameable(long[] run) {
		return run[1] - run[0] >= least + 2 * gap;
	}

	boolean isPier(long[] run) {
		long two = centre == 1 ? 2 * least + 3 * gap : (2 + centre) * least + 4 * gap;
		return isFrameable(run) && run[1] - run[0] < two;
	}

	long total(long[] run, int n) {
		return run[1] - run[0] - gap * (n + 1);
	}

	/** Returns how many side frames' widths n frames make. */
	int parts(int n) {
		return n - 1 + centre;
	}

	/** Returns the widths of n frames, null if the run cannot have so many. */
	private long[] widths(long[] run, int n) {
		long total = total(run, n);
		long[] widths = new long[n];
		if (n == 1) {
			widths[0] = total;
		} else if (centre == 1) {
			for (int i = 0; i < n; i++) {
				widths[i] = total / n + (i < total % n ? 1 : 0);
			}
		} else if (n % 2 == 0) {
			return null;
		} else {
			Arrays.fill(widths, total / parts(n));
			widths[(n - 1) / 2] = total - (n - 1) * widths[0];
		}
		return widths;
	}

	/** Returns a number of frames above which none is legal. */
	int most(long[] run) {
		int n = 0;
		while (total(run, n + 1) >= least * (n + 1)) {
			n++;
		}
		return isFrameable(run) ? n : 0;
	}

	boolean isOutOfBand(long[] run, int n) {
		double wide = (double) total(run, n) * centre / parts(n);
		double w = n == 1 ? wide : wide / centre;
		if (wishLow != null || wishHigh != null) {
			return wishLow != null && w < wishLow.units() || wishHigh != null && wide > wishHigh.units();
		}
		double h = top - bottom - 2.0 * gapY;
		return h <= 800 * MM ? w < h / 2 || wide > 2 * h : w < h / 3 || wide > h;
	}

	/** Returns the near distances of n frames, or -1 if they may not be. */
	int near(long[] run, int n) {
		long[] widths = widths(run, n);
		if (widths == null) {
			return -1;
		}
		int near = 0;
		long x = run[0] + gap;
		for (long w : widths) {
			int one = near(new long[] { x, bottom + gapY, x + w, top - gapY });
			if (one < 0) {
				return -1;
			}
			near += one;
			x += w + gap;
		}
		return near;
	}

	/** Returns the near distances of one frame, or -1 if it may not be. */
	private int near(long[] frame) {
		long w = frame[2] - frame[0];
		long h = frame[3] - frame[1];
		if (w < least || h < least || w > longest || h > longest) {
			return -1;
		}
		int near = 0;
		for (long[] island : islands) {
			if (comesNearer(frame, island, island[4])) {
				return -1;
			}
			if (island[5] > island[4] && comesNearer(frame, island, island[5])) {
				near++;
			}
		}
		return near;
	}

	/** Four strips against the island grown by a distance; with no distance, touching is too near. */
	private boolean comesNearer(long[] frame, long[] island, long distance) {
		long[] grown = { island[0] - distance, island[1] - distance, island[2] + distance, island[3] + distance };
		boolean inField = grown[0] >= frame[0] + face && grown[1] >= frame[1] + face && grown[2] <= frame[2] - face
				&& grown[3] <= frame[3] - face;
		if (inField) {
			return false;
		}
		boolean beside = distance == 0
				? grown[0] > frame[2] || grown[2] < frame[0] || grown[1] > frame[3] || grown[3] < frame[1]
				: grown[0] >= frame[2] || grown[2] <= frame[0] || grown[1] >= frame[3] || grown[3] <= frame[1];
		return !beside;
	}

	private boolean reaches(long[] r) {
		return r[1] < top && r[3] > bottom && r[0] < width && r[2] > 0;
	}

	/** Returns every way to keep or drop anchors and to make islands blockers. */
	List<Parting> partings() {
		List<long[]> blockers = new ArrayList<>();
		openings.stream().filter(this::reaches).forEach(blockers::add);
		others.stream().filter(this::reaches).forEach(blockers::add);
		long[] fixed = new long[6];
		addBays(fixed);
		List<long[]> anchors = anchors(blockers, fixed);
		List<long[]> splittable = islands.stream().filter(this::reaches).filter(island -> runs(blockers, List.of()).stream()
				.anyMatch(run -> island[0] < run[1] && island[2] > run[0])).toList();
		List<Parting> partings = new ArrayList<>();
		for (int kept = 0; kept < 1 << anchors.size(); kept++) {
			for (int split = 0; split < 1 << splittable.size(); split++) {
				Parting parting = parting(blockers, pick(anchors, kept), pick(splittable, split), fixed);
				if (parting != null) {
					parting.terms()[2] += anchors.size() - Integer.bitCount(kept);
					partings.add(parting);
				}
			}
		}
		return partings;
	}

	private static List<long[]> pick(List<long[]> all, int bits) {
		List<long[]> picked = new ArrayList<>();
		for (int i = 0; i < all.size(); i++) {
			if ((bits & 1 << i) != 0) {
				picked.add(all.get(i));
			}
		}
		return picked;
	}

	private Parting parting(List<long[]> blockers, List<long[]> anchors, List<long[]> split, long[] fixed) {
		List<long[]> all = new ArrayList<>(blockers);
		all.addAll(split);
		long[] terms = fixed.clone();
		terms[1] = split.size();
		for (long[] anchor : anchors) {
			for (long[] island : split) {
				if (island[0] - anchor[1] < gap && anchor[0] - island[2] < gap) {
					return null;
				}
			}
			terms[3] += near(new long[] { anchor[0], bottom + gapY, anchor[1], top - gapY });
			terms[5]++;
		}
		return new Parting(terms, runs(all, anchors));
	}

	/** Returns what is left of the width. */
	private List<long[]> runs(List<long[]> blockers, List<long[]> anchors) {
		List<long[]> cuts = new ArrayList<>();
		blockers.forEach(blocker -> cuts.add(new long[] { blocker[0], blocker[2] }));
		anchors.forEach(anchor -> cuts.add(new long[] { anchor[0], anchor[1] }));
		cuts.sort((a, b) -> Long.compare(a[0], b[0]));
		List<long[]> runs = new ArrayList<>();
		long x = 0;
		for (long[] cut : cuts) {
			if (cut[0] > x) {
				runs.add(new long[] { x, Math.min(cut[0], width) });
			}
			x = Math.max(x, cut[1]);
		}
		if (x < width) {
			runs.add(new long[] { x, width });
		}
		return runs;
	}

	/** Returns the legal anchors; those that exist but are not legal are counted as dropped. */
	private List<long[]> anchors(List<long[]> blockers, long[] fixed) {
		List<long[]> shared = new ArrayList<>();
		List<Integer> order = new ArrayList<>();
		for (int i = 0; anchored && i < openings.size(); i++) {
			if (isWindow.get(i) && openings.get(i)[1] >= top && openings.get(i)[0] < width && openings.get(i)[2] > 0) {
				order.add(i);
			}
		}
		order.sort((a, b) -> Long.compare(openings.get(a)[0], openings.get(b)[0]));
		for (int i : order) {
			long[] r = openings.get(i);
			long[] last = shared.isEmpty() ? null : shared.get(shared.size() - 1);
			if (last != null && r[0] - last[1] < gap) {
				last[1] = Math.max(last[1], r[2]);
			} else {
				shared.add(new long[] { r[0], r[2] });
			}
		}
		List<long[]> legal = new ArrayList<>();
		for (long[] anchor : shared) {
			boolean inRun = runs(blockers, List.of()).stream()
					.anyMatch(run -> anchor[0] - run[0] >= gap && run[1] - anchor[1] >= gap);
			if (anchor[1] - anchor[0] >= least && inRun) {
				if (near(new long[] { anchor[0], bottom + gapY, anchor[1], top - gapY }) < 0) {
					fixed[2]++;
				} else {
					legal.add(anchor);
				}
			}
		}
		return legal;
	}

	private void addBays(long[] fixed) {
		Set<Integer> done = new HashSet<>();
		for (int i = 0; i < openings.size(); i++) {
			if (reaches(openings.get(i)) && done.add(i)) {
				long[] r = openings.get(i).clone();
				Set<Integer> group = new HashSet<>(Set.of(i));
				boolean grown = true;
				while (grown) {
					grown = false;
					for (int j = 0; j < openings.size(); j++) {
						long[] o = openings.get(j);
						if (!group.contains(j) && reaches(o) && o[0] - r[2] < gap && r[0] - o[2] < gap) {
							group.add(j);
							done.add(j);
							r = new long[] { Math.min(r[0], o[0]), Math.min(r[1], o[1]), Math.max(r[2], o[2]), Math.max(r[3], o[3]) };
							grown = true;
						}
					}
				}
				addBay(fixed, group, new long[] { r[0], bottom + gapY, r[2], r[1] - gapY });
				addBay(fixed, group, new long[] { r[0], r[3] + gapY, r[2], top - gapY });
			}
		}
	}

	private void addBay(long[] fixed, Set<Integer> group, long[] frame) {
		if (frame[3] - frame[1] < least || frame[2] - frame[0] < least || frame[0] < gap || frame[2] > width - gap) {
			return;
		}
		List<long[]> all = new ArrayList<>(others);
		for (int i = 0; i < openings.size(); i++) {
			if (!group.contains(i)) {
				all.add(openings.get(i));
			}
		}
		for (long[] r : all) {
			if (r[0] < frame[2] + gap && r[2] > frame[0] - gap && r[1] < frame[3] + gapY && r[3] > frame[1] - gapY) {
				return;
			}
		}
		int near = near(frame);
		if (near < 0) {
			fixed[2]++;
		} else {
			fixed[3] += near;
			fixed[5]++;
		}
	}
}
