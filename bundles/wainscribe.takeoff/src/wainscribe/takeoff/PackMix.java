// SPDX-License-Identifier: EPL-2.0
package wainscribe.takeoff;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Finds the packs that cover a need for the least money; of equal ones those that leave least over.
 * <p>
 * Every mix that can still win is tried, largest pack first; a branch ends where its price and the cheapest price by
 * quantity of what is still missing pass the best mix so far. So the answer is exact.
 */
public final class PackMix {

	private static final double TINY = 1e-9;

	private final BigDecimal need;
	private final List<Pack> packs;
	private final BigDecimal cheapestRate;
	private int[] best;
	private BigDecimal bestCost;
	private BigDecimal bestSize;
	private int bestCount;

	private PackMix(BigDecimal need, List<Pack> packs) {
		this.need = need;
		this.packs = packs;
		cheapestRate = packs.stream().map(pack -> pack.price().divide(pack.size(), MathContext.DECIMAL64))
				.min(Comparator.naturalOrder()).orElseThrow();
	}

	/**
	 * Finds the best mix.
	 *
	 * @param need  how much is needed
	 * @param offer the packs offered, at least one
	 * @return how many of each, in the order of the offer; noughts if nothing is needed
	 */
	public static List<Integer> cheapest(BigDecimal need, List<Pack> offer) {
		List<Integer> order = new ArrayList<>();
		for (int i = 0; i < offer.size(); i++) {
			order.add(i);
		}
		order.sort(Comparator.comparing((Integer i) -> offer.get(i).size()).reversed());
		PackMix mix = new PackMix(need, order.stream().map(offer::get).toList());
		mix.startWithOneSize();
		mix.search(0, need, BigDecimal.ZERO, new int[offer.size()]);
		Integer[] counts = new Integer[offer.size()];
		for (int i = 0; i < counts.length; i++) {
			counts[order.get(i)] = mix.best[i];
		}
		return List.of(counts);
	}

	/** The best mix of a single size is a good first bound. */
	private void startWithOneSize() {
		for (int i = 0; i < packs.size(); i++) {
			int[] counts = new int[packs.size()];
			counts[i] = covering(need, packs.get(i));
			keepIfBetter(counts);
		}
	}

	private void search(int index, BigDecimal missing, BigDecimal cost, int[] counts) {
		if (missing.signum() <= 0) {
			keepIfBetter(counts);
			return;
		}
		BigDecimal bound = cost.add(cheapestRate.multiply(missing, MathContext.DECIMAL64));
		double above = bound.subtract(bestCost).doubleValue();
		boolean hopeless = bestSize.compareTo(need) == 0 ? above > -TINY : above > TINY;
		if (index == packs.size() || hopeless) {
			return;
		}
		Pack pack = packs.get(index);
		boolean last = index == packs.size() - 1;
		int most = covering(missing, pack);
		for (int count = most; count >= (last ? most : 0); count--) {
			counts[index] = count;
			BigDecimal times = BigDecimal.valueOf(count);
			search(index + 1, missing.subtract(pack.size().multiply(times)), cost.add(pack.price().multiply(times)), counts);
		}
		counts[index] = 0;
	}

	private static int covering(BigDecimal missing, Pack pack) {
		return missing.signum() <= 0 ? 0 : missing.divide(pack.size(), 0, RoundingMode.CEILING).intValueExact();
	}

	private void keepIfBetter(int[] counts) {
		BigDecimal cost = BigDecimal.ZERO;
		BigDecimal size = BigDecimal.ZERO;
		int count = 0;
		for (int i = 0; i < counts.length; i++) {
			BigDecimal times = BigDecimal.valueOf(counts[i]);
			cost = cost.add(packs.get(i).price().multiply(times));
			size = size.add(packs.get(i).size().multiply(times));
			count += counts[i];
		}
		int order = best == null ? -1 : cost.compareTo(bestCost);
		order = order == 0 ? size.compareTo(bestSize) : order;
		order = order == 0 ? Integer.compare(count, bestCount) : order;
		if (order < 0) {
			best = counts.clone();
			bestCost = cost;
			bestSize = size;
			bestCount = count;
		}
	}
}
