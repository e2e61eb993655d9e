// SPDX-License-Identifier: EPL-2.0
package wainscribe.takeoff;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;

import wainscribe.model.Home;
import wainscribe.model.Price;
import wainscribe.model.PriceUnit;

/** The prices of a home, looked up by item and unit. Prices without an amount or an item count as not there. */
record PriceBook(List<Price> prices) {

	private static final int CENTS = 2;

	static PriceBook of(Home home) {
		return new PriceBook(home.getPrices().stream().filter(price -> price.getItem() != null && price.getAmount() != null)
				.toList());
	}

	List<Price> of(String key, PriceUnit unit) {
		return prices.stream().filter(price -> price.getItem().equals(key) && price.getUnit() == unit).toList();
	}

	boolean has(String key) {
		return prices.stream().anyMatch(price -> price.getItem().equals(key));
	}

	/** Returns a line with the packs that cover the need for the least money, or without packs and price. */
	TakeoffLine bought(TakeoffLine line, BigDecimal need, PriceUnit unit, String packUnit) {
		List<Price> offers = of(line.key(), unit);
		if (offers.isEmpty() || need == null) {
			return line;
		}
		List<Pack> packs = offers.stream().map(price -> new Pack(size(price), price.getAmount())).toList();
		List<Integer> counts = PackMix.cheapest(need, packs);
		List<PackCount> bought = new ArrayList<>();
		BigDecimal total = BigDecimal.ZERO;
		for (int i = 0; i < packs.size(); i++) {
			if (counts.get(i) > 0) {
				bought.add(new PackCount(counts.get(i), packs.get(i).size(), packUnit, packs.get(i).price()));
				total = total.add(packs.get(i).price().multiply(BigDecimal.valueOf(counts.get(i))));
			}
		}
		return priced(line, bought, total);
	}

	static TakeoffLine priced(TakeoffLine line, List<PackCount> packs, BigDecimal total) {
		return new TakeoffLine(line.key(), line.group(), line.item(), line.formula(), line.source(), line.quantity(),
				line.unit(), packs, total == null ? null : total.setScale(CENTS, RoundingMode.HALF_UP));
	}

	private static BigDecimal size(Price price) {
		return price.getPack() == null ? BigDecimal.ONE : price.getPack();
	}
}
