// SPDX-License-Identifier: EPL-2.0
package wainscribe.cutting;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.List;

/**
 * Prices as whole numbers: multiples of the largest amount of which all prices are multiples. Costs of plans are such multiples
 * too, so a bound may be rounded up to one.
 */
final class Money {

	private final BigDecimal step;
	private final int scale;

	Money(List<StockLength> stock) {
		scale = stock.stream().mapToInt(row -> row.price().scale()).max().orElse(0);
		BigInteger divisor = BigInteger.ZERO;
		for (StockLength row : stock) {
			divisor = divisor.gcd(row.price().setScale(scale).unscaledValue());
		}
		step = new BigDecimal(divisor.signum() == 0 ? BigInteger.ONE : divisor, scale);
	}

	/** Returns how many steps a price is. */
	long units(BigDecimal price) {
		return price.divide(step).longValueExact();
	}

	/** Returns the amount of so many steps. */
	BigDecimal amount(long units) {
		return step.multiply(BigDecimal.valueOf(units)).setScale(Math.max(scale, 0));
	}
}
