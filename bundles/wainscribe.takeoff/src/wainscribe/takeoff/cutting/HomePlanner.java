// SPDX-License-Identifier: EPL-2.0
package wainscribe.takeoff.cutting;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;

import wainscribe.cutting.Bar;
import wainscribe.cutting.BarSource;
import wainscribe.cutting.CuttingJob;
import wainscribe.cutting.CuttingPlan;
import wainscribe.cutting.CuttingPlanner;
import wainscribe.cutting.PlanWatch;
import wainscribe.model.StoredOffcut;
import wainscribe.model.length.Length;

/** Plans which piece of a home is cut from which bar. Stateless; may run on any thread. */
public final class HomePlanner {

	private static final CuttingPlan NOTHING = new CuttingPlan(List.of(), HomeCuttingJob.nothing(), HomeCuttingJob.nothing(), true,
			List.of());

	/** What an assembled plan needs of the job: pieces and kinds by the names the planner knows them by. */
	private record Names(Map<String, PlannedPiece> pieces, Map<String, Integer> kinds, Map<String, StoredOffcut> offcuts) {
	}

	/**
	 * Plans a job.
	 *
	 * @param job      what to cut and from what
	 * @param stopped  tells whether to end now with the best plan so far; asked often
	 * @param improved takes each better plan, on the calling thread
	 * @return the best plan
	 */
	public HomePlan plan(HomeCuttingJob job, BooleanSupplier stopped, Consumer<HomePlan> improved) {
		Objects.requireNonNull(improved);
		Names names = names(job);
		List<KindJob> byPrice = job.kinds().stream().filter(KindJob::isPriced).toList();
		List<KindJob> byLength = job.kinds().stream().filter(kind -> !kind.isPriced()).toList();
		CuttingPlan lengths = run(job, byLength, stopped, best -> {
			if (byPrice.isEmpty()) {
				improved.accept(assembled(job, names, NOTHING, best));
			}
		});
		CuttingPlan money = run(job, byPrice, stopped, best -> improved.accept(assembled(job, names, best, lengths)));
		return assembled(job, names, money, lengths);
	}

	/**
	 * Plans a job within a time.
	 *
	 * @param job    what to cut and from what
	 * @param millis after how many milliseconds the best plan so far is taken
	 */
	public HomePlan plan(HomeCuttingJob job, long millis) {
		long start = System.nanoTime();
		return plan(job, () -> (System.nanoTime() - start) / 1_000_000 >= millis, plan -> {
			// only the last one counts
		});
	}

	private static CuttingPlan run(HomeCuttingJob job, List<KindJob> kinds, BooleanSupplier stopped, Consumer<CuttingPlan> improved) {
		List<KindJob> open = kinds.stream().filter(kind -> !kind.pieces().isEmpty()).toList();
		if (open.isEmpty()) {
			return NOTHING;
		}
		CuttingJob task = new CuttingJob(open.stream().flatMap(kind -> kind.demands().stream()).toList(),
				open.stream().flatMap(kind -> kind.stock().stream()).toList(),
				open.stream().flatMap(kind -> kind.leftovers().stream()).toList(), job.decisions().kerf(), job.decisions().endTrim(),
				job.decisions().shortestOffcut());
		return new CuttingPlanner().plan(task, new PlanWatch() {
			@Override
			public boolean stopped() {
				return stopped.getAsBoolean();
			}

			@Override
			public void improved(CuttingPlan best) {
				improved.accept(best);
			}
		});
	}

	private static Names names(HomeCuttingJob job) {
		Names names = new Names(new HashMap<>(), new HashMap<>(), new HashMap<>());
		for (int i = 0; i < job.kinds().size(); i++) {
			KindJob kind = job.kinds().get(i);
			names.kinds.put(kind.kind().key(), i);
			kind.pieces().forEach(piece -> names.pieces.put(piece.key(), piece));
			kind.offcuts().forEach(offcut -> names.offcuts.put(offcut.getId(), offcut));
		}
		return names;
	}

	private static HomePlan assembled(HomeCuttingJob job, Names names, CuttingPlan money, CuttingPlan lengths) {
		List<PlannedBar> bars = new ArrayList<>();
		money.bars().forEach(bar -> bars.add(bar(job, names, bar)));
		lengths.bars().forEach(bar -> bars.add(bar(job, names, bar)));
		bars.sort(Comparator.comparing((PlannedBar bar) -> names.kinds.get(bar.kind().key()))
				.thenComparing(PlannedBar::isBought).thenComparing(PlannedBar::length, Comparator.reverseOrder()));
		for (int i = 0; i < bars.size(); i++) {
			bars.set(i, numbered(bars.get(i), i + 1));
		}
		List<PlannedPiece> unplaced = new ArrayList<>();
		money.unplaced().forEach(piece -> unplaced.add(names.pieces.get(piece.label())));
		lengths.unplaced().forEach(piece -> unplaced.add(names.pieces.get(piece.label())));
		List<StockKind> unpriced = job.kinds().stream().filter(kind -> !kind.pieces().isEmpty() && !kind.isPriced()).map(KindJob::kind).toList();
		return new HomePlan(job.decisions(), bars, job.accepted(), money.cost(), money.lowerBound(),
				money.optimal() && lengths.optimal(), unplaced, unpriced);
	}

	private static PlannedBar bar(HomeCuttingJob job, Names names, Bar bar) {
		KindJob kind = job.kinds().get(names.kinds.get(bar.profile()));
		boolean offcut = bar.source() == BarSource.OFFCUT;
		List<PlannedPiece> pieces = bar.pieces().stream().map(piece -> names.pieces.get(piece.label())).toList();
		String name = offcut ? names.offcuts.get(bar.label()).getName() : ""; //$NON-NLS-1$
		Length length = bar.length();
		BigDecimal price = offcut || kind.isPriced() ? bar.price() : priceOf(kind, length);
		return new PlannedBar(1, bar.source(), name == null ? "" : name, offcut ? bar.label() : "", kind.kind(), length, price, pieces, //$NON-NLS-1$ //$NON-NLS-2$
				bar.remainder());
	}

	/** In a kind planned by length some lengths may have a price nevertheless. */
	private static BigDecimal priceOf(KindJob kind, Length length) {
		return kind.offers().stream().filter(offer -> offer.length().equals(length)).findFirst().map(StockOffer::price).orElse(null);
	}

	private static PlannedBar numbered(PlannedBar bar, int number) {
		return new PlannedBar(number, bar.source(), bar.label(), bar.offcut(), bar.kind(), bar.length(), bar.price(), bar.pieces(),
				bar.remainder());
	}
}
