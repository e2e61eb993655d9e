// SPDX-License-Identifier: EPL-2.0
package wainscribe.layout.exhaustive;

import java.util.ArrayList;
import java.util.List;

import wainscribe.layout.EffectiveBrief;
import wainscribe.model.Room;
import wainscribe.model.Wall;

/** All fillings of one level wall at one gap, by the definition. */
final class ExhaustiveWall {

	/**
	 * A filling.
	 *
	 * @param terms  plain, splits, anchorsDropped, near, outOfBand, frames
	 * @param widths widths that count for the module, as numerator and denominator
	 */
	record Filling(long[] terms, List<long[]> widths) {
	}

	private final List<ExhaustiveTier> tiers = new ArrayList<>();

	ExhaustiveWall(Room room, Wall wall, EffectiveBrief brief, long gap) {
		long base = brief.base().units();
		long railTop = brief.railTop().units();
		long railBottom = railTop - brief.rail().face().units();
		long ceiling = room.getHeight().units() - brief.crown().units();
		switch (brief.pattern()) {
		case "frames-under-rail" -> tiers.add(new ExhaustiveTier(wall, brief, gap, base, railBottom, true, 1));
		case "wide-centre" -> tiers.add(new ExhaustiveTier(wall, brief, gap, base, railBottom, true, 2));
		case "frames-two-tier" -> {
			tiers.add(new ExhaustiveTier(wall, brief, gap, base, railBottom, true, 1));
			tiers.add(new ExhaustiveTier(wall, brief, gap, railTop, ceiling, false, 1));
		}
		case "frames-to-ceiling" -> tiers.add(new ExhaustiveTier(wall, brief, gap, base, ceiling, false, 1));
		default -> throw new IllegalArgumentException(brief.pattern());
		}
	}

	List<Filling> fillings() {
		List<Filling> fillings = new ArrayList<>();
		List<List<ExhaustiveTier.Parting>> partings = tiers.stream().map(ExhaustiveTier::partings).toList();
		for (ExhaustiveTier.Parting lower : partings.get(0)) {
			if (tiers.size() == 1) {
				fill(fillings, lower, null);
			} else {
				for (ExhaustiveTier.Parting upper : partings.get(1)) {
					fill(fillings, lower, upper);
				}
			}
		}
		return fillings;
	}

	private void fill(List<Filling> fillings, ExhaustiveTier.Parting lower, ExhaustiveTier.Parting upper) {
		List<long[]> runs = new ArrayList<>();
		List<ExhaustiveTier> owners = new ArrayList<>();
		lower.runs().forEach(run -> {
			runs.add(run);
			owners.add(tiers.get(0));
		});
		long[] fixed = lower.terms().clone();
		if (upper != null) {
			upper.runs().forEach(run -> {
				runs.add(run);
				owners.add(tiers.get(1));
			});
			for (int i = 0; i < fixed.length; i++) {
				fixed[i] += upper.terms()[i];
			}
		}
		count(fillings, runs, owners, new int[runs.size()], 0, fixed);
	}

	private void count(List<Filling> fillings, List<long[]> runs, List<ExhaustiveTier> owners, int[] counts, int index, long[] fixed) {
		if (index == runs.size()) {
			if (matches(runs, owners, counts)) {
				fillings.add(filling(runs, owners, counts, fixed));
			}
			return;
		}
		long[] run = runs.get(index);
		int most = owners.get(index).most(run);
		for (int n = 0; n <= most; n++) {
			if (n == 0 || owners.get(index).near(run, n) >= 0) {
				counts[index] = n;
				count(fillings, runs, owners, counts, index + 1, fixed);
			}
		}
	}

	/** Runs with the same ends in both tiers take the same n if any n is legal in both. */
	private boolean matches(List<long[]> runs, List<ExhaustiveTier> owners, int[] counts) {
		for (int i = 0; i < counts.length; i++) {
			for (int j = i + 1; j < counts.length; j++) {
				long[] a = runs.get(i);
				long[] b = runs.get(j);
				if (owners.get(i) != owners.get(j) && a[0] == b[0] && a[1] == b[1] && counts[i] != counts[j]) {
					for (int n = 1; n <= owners.get(i).most(a); n++) {
						if (owners.get(i).near(a, n) >= 0 && owners.get(j).near(b, n) >= 0) {
							return false;
						}
					}
				}
			}
		}
		return true;
	}

	private Filling filling(List<long[]> runs, List<ExhaustiveTier> owners, int[] counts, long[] fixed) {
		long[] terms = fixed.clone();
		List<long[]> widths = new ArrayList<>();
		for (int i = 0; i < counts.length; i++) {
			ExhaustiveTier tier = owners.get(i);
			long[] run = runs.get(i);
			int n = counts[i];
			if (n == 0) {
				terms[0] += tier.isFrameable(run) ? 1 : 0;
			} else {
				terms[3] += tier.near(run, n);
				terms[4] += tier.isOutOfBand(run, n) ? 1 : 0;
				terms[5] += n;
				if (!tier.isPier(run)) {
					widths.add(new long[] { tier.total(run, n), tier.parts(n) });
				}
			}
		}
		return new Filling(terms, widths);
	}
}
