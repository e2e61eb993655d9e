// SPDX-License-Identifier: EPL-2.0
package wainscribe.cutting;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

import wainscribe.model.length.Length;

/**
 * Bars of one length and price.
 *
 * @param source bought or left over
 * @param length full length
 * @param price  price of one, zero for offcuts
 * @param number how many there are, {@link #ANY_NUMBER} without limit
 * @param labels labels of offcuts in order; empty for stock
 */
record BarGroup(BarSource source, Length length, BigDecimal price, long number, List<String> labels) {

	static final long ANY_NUMBER = Long.MAX_VALUE;

	private static final Comparator<BarGroup> ORDER = Comparator.comparing(BarGroup::source)
		.thenComparing(Comparator.comparing(BarGroup::length).reversed()).thenComparing(BarGroup::price);

	/** Returns all bars of a profile, equal ones together, in an order that does not depend on that of the rows. */
	static List<BarGroup> of(String profile, CuttingJob job) {
		List<BarGroup> groups = new ArrayList<>();
		Map<Length, Map<BigDecimal, Long>> stock = new TreeMap<>();
		for (StockLength row : job.stock()) {
			if (row.profile().equals(profile)) {
				stock.computeIfAbsent(row.length(), length -> new TreeMap<>()).merge(row.price(),
					row.available().isPresent() ? row.available().getAsInt() : ANY_NUMBER, BarGroup::sum);
			}
		}
		stock.forEach((length, prices) -> prices
			.forEach((price, number) -> groups.add(new BarGroup(BarSource.STOCK, length, price, number, List.of()))));
		Map<Length, List<String>> offcuts = new TreeMap<>();
		for (Offcut offcut : job.offcuts()) {
			if (offcut.profile().equals(profile)) {
				offcuts.computeIfAbsent(offcut.length(), length -> new ArrayList<>()).add(offcut.label());
			}
		}
		offcuts.forEach((length, labels) -> groups.add(
			new BarGroup(BarSource.OFFCUT, length, BigDecimal.ZERO, labels.size(), labels.stream().sorted().toList())));
		groups.sort(ORDER);
		return groups;
	}

	private static long sum(long a, long b) {
		return a == ANY_NUMBER || b == ANY_NUMBER ? ANY_NUMBER : a + b;
	}

	/** Returns the label of one of the bars. */
	String label(int index) {
		return labels.isEmpty() ? "" : labels.get(index); //$NON-NLS-1$
	}
}
