// SPDX-License-Identifier: EPL-2.0
package wainscribe.cutting.solver;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Optional;

/**
 * How many bars of each type to buy: the cheapest numbers that all dual cuts allow and that are not known to fail. Bars that cost
 * nothing are always all taken.
 */
final class BarMixes {

	private static final long MOST_STEPS = 2_000_000;

	private final List<BarType> bars;
	private final List<DualCut> cuts;
	private final List<int[]> failed;
	private final List<int[]> undecided;
	private final double[][] rates;
	private int[] numbers;
	private int[] best;
	private long bestCost;
	private long atLeast;
	private long steps;

	/**
	 * Prepares a search.
	 *
	 * @param bars      the bar types
	 * @param cuts      what the numbers must obey
	 * @param failed    numbers of bars known to be too few
	 * @param undecided numbers of bars to leave out
	 */
	BarMixes(List<BarType> bars, Collection<DualCut> cuts, List<int[]> failed, List<int[]> undecided) {
		this.bars = bars;
		this.cuts = new ArrayList<>(cuts);
		this.failed = failed;
		this.undecided = undecided;
		rates = this.cuts.stream().map(this::leastRates).toArray(double[][]::new);
	}

	/** Least cost for a unit of worth with the bar types from an index on. */
	private double[] leastRates(DualCut cut) {
		double[] least = new double[bars.size() + 1];
		least[bars.size()] = Double.POSITIVE_INFINITY;
		for (int k = bars.size() - 1; k >= 0; k--) {
			boolean counts = bars.get(k).cost() > 0 && bars.get(k).limit() > 0 && cut.worths()[k] > 0;
			least[k] = counts ? Math.min(least[k + 1], (double) bars.get(k).cost() / cut.worths()[k]) : least[k + 1];
		}
		return least;
	}

	/**
	 * Finds the cheapest numbers.
	 *
	 * @param atLeast known bound on the cost
	 * @param below   cost to stay below
	 * @return the numbers; empty if there are none
	 * @throws TooManyMixesException if the search was cut short
	 */
	Optional<int[]> cheapest(long atLeast, long below) throws TooManyMixesException {
		this.atLeast = atLeast;
		bestCost = below;
		best = null;
		steps = 0;
		numbers = new int[bars.size()];
		long[] missing = new long[cuts.size()];
		Arrays.setAll(missing, c -> cuts.get(c).need());
		search(0, missing, 0);
		return Optional.ofNullable(best);
	}

	/** There are too many mixes of bars to look at. */
	static final class TooManyMixesException extends Exception {
		private static final long serialVersionUID = 1L;
	}

	private void search(int bar, long[] missing, long cost) throws TooManyMixesException {
		if (++steps > MOST_STEPS) {
			throw new TooManyMixesException();
		}
		if (bestCost <= atLeast || bound(bar, missing, cost) >= bestCost) {
			return;
		}
		if (bar == bars.size()) {
			if (failed.stream().noneMatch(this::isWithin) && undecided.stream().noneMatch(other -> Arrays.equals(other, numbers))) {
				best = numbers.clone();
				bestCost = cost;
			}
			return;
		}
		BarType type = bars.get(bar);
		int least = type.cost() == 0 ? type.limit() : 0;
		int most = type.cost() == 0 ? type.limit() : most(bar, cost);
		for (int number = most; number >= least; number--) {
			numbers[bar] = number;
			long[] rest = missing.clone();
			for (int c = 0; c < rest.length; c++) {
				rest[c] -= cuts.get(c).worths()[bar] * number;
			}
			search(bar + 1, rest, cost + type.cost() * number);
		}
		numbers[bar] = 0;
	}

	/** No more than money allows. */
	private int most(int bar, long cost) {
		BarType type = bars.get(bar);
		return (int) Math.min(type.limit(), Math.max(0, (bestCost - cost - 1) / type.cost()));
	}

	private double bound(int bar, long[] missing, long cost) {
		double most = cost;
		for (int c = 0; c < missing.length; c++) {
			if (missing[c] > 0) {
				most = Math.max(most, bar == bars.size() ? Double.POSITIVE_INFINITY : cost + free(bar, c, missing[c]) - 1e-6);
			}
		}
		return Math.ceil(most);
	}

	/** Cost of the missing worth at the least rate, bars that cost nothing taken off first. */
	private double free(int bar, int c, long missing) {
		long rest = missing;
		for (int k = bar; k < bars.size(); k++) {
			if (bars.get(k).cost() == 0) {
				rest -= cuts.get(c).worths()[k] * bars.get(k).limit();
			}
		}
		return rest <= 0 ? 0 : rest * rates[c][bar];
	}

	private boolean isWithin(int[] tooFew) {
		for (int k = 0; k < numbers.length; k++) {
			if (numbers[k] > tooFew[k]) {
				return false;
			}
		}
		return true;
	}
}
