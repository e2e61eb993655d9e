// SPDX-License-Identifier: EPL-2.0
package wainscribe.cutting;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;

import wainscribe.model.length.Length;

/** Tries every way to put the pieces of a small job on bars; shares nothing with the planner but the definition. */
final class ExhaustivePlan {

	/** What a plan is judged by, in this order: least missing, least cost, longest remainder. */
	record Worth(long missing, BigDecimal cost, long remainder) implements Comparable<Worth> {

		@Override
		public int compareTo(Worth other) {
			int order = Long.compare(missing, other.missing);
			order = order == 0 ? cost.compareTo(other.cost) : order;
			return order == 0 ? Long.compare(other.remainder, remainder) : order;
		}
	}

	private static final class Cut {
		private final int kind;
		private long used;
		private int pieces;

		private Cut(int kind) {
			this.kind = kind;
		}
	}

	private record Kind(long length, BigDecimal price, int number) {
	}

	private final CuttingJob job;
	private final List<Length> pieces = new ArrayList<>();
	private final List<Kind> kinds = new ArrayList<>();
	private final int[] taken;
	private final List<Cut> cuts = new ArrayList<>();
	private Worth best;

	private ExhaustivePlan(CuttingJob job) {
		this.job = job;
		job.pieces().forEach(piece -> {
			for (int i = 0; i < piece.quantity(); i++) {
				pieces.add(piece.length());
			}
		});
		job.stock().forEach(row -> kinds.add(new Kind(row.length().units(), row.price(), row.available().orElse(Integer.MAX_VALUE))));
		job.offcuts().forEach(row -> kinds.add(new Kind(row.length().units(), BigDecimal.ZERO, 1)));
		taken = new int[kinds.size()];
	}

	/** Returns the worth of the best plan of a job with one profile. */
	static Worth best(CuttingJob job) {
		ExhaustivePlan all = new ExhaustivePlan(job);
		all.place(0, 0, BigDecimal.ZERO);
		return all.best;
	}

	static Worth of(CuttingPlan plan) {
		long missing = plan.unplaced().stream().mapToLong(piece -> piece.length().units() * piece.quantity()).sum();
		return new Worth(missing, plan.cost(), plan.longestRemainder().units());
	}

	private void place(int index, long missing, BigDecimal cost) {
		if (best != null && (missing > best.missing || missing == best.missing && cost.compareTo(best.cost) > 0)) {
			return;
		}
		if (index == pieces.size()) {
			Worth worth = new Worth(missing, cost, cuts.stream().mapToLong(this::remainder).max().orElse(0));
			best = best == null || worth.compareTo(best) < 0 ? worth : best;
			return;
		}
		long length = pieces.get(index).units();
		for (Cut cut : List.copyOf(cuts)) {
			if (cut.used + job.kerf().units() * cut.pieces + length <= room(cut)) {
				put(cut, length, index, missing, cost);
			}
		}
		for (int k = 0; k < kinds.size(); k++) {
			Cut cut = new Cut(k);
			if (taken[k] < kinds.get(k).number && length <= room(cut)) {
				taken[k]++;
				cuts.add(cut);
				put(cut, length, index, missing, cost.add(kinds.get(k).price));
				cuts.removeLast();
				taken[k]--;
			}
		}
		place(index + 1, missing + length, cost);
	}

	private void put(Cut cut, long length, int index, long missing, BigDecimal cost) {
		cut.used += length;
		cut.pieces++;
		place(index + 1, missing, cost);
		cut.used -= length;
		cut.pieces--;
	}

	private long room(Cut cut) {
		return kinds.get(cut.kind).length - job.endTrim().units();
	}

	private long remainder(Cut cut) {
		return Math.max(0, room(cut) - cut.used - job.kerf().units() * cut.pieces);
	}
}
