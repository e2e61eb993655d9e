// SPDX-License-Identifier: EPL-2.0
package wainscribe.cutting.solver;

import java.math.BigInteger;
import java.util.List;

/**
 * Least cost at which bars of given worth add up to a given need, bars taken in fractions (Dantzig 1957). With weights and
 * capacities this is the material bound; with the values of a dual solution it is the bound of Farley (1990, Oper. Res. 38(5),
 * 922-923) for limited bars. All in whole numbers, so it is safe.
 */
final class MaterialBound {

	private MaterialBound() {
	}

	/**
	 * Returns the bound, rounded up.
	 *
	 * @param bars  the bar types
	 * @param worth what one bar of each type adds at most
	 * @param need  what has to be reached
	 * @return no whole number of bars that reaches the need costs less; what all bars cost if they don't reach it
	 */
	static long cost(List<BarType> bars, long[] worth, BigInteger need) {
		List<Integer> order = java.util.stream.IntStream.range(0, worth.length).filter(k -> worth[k] > 0).boxed()
			.sorted((a, b) -> compareRates(bars.get(a).cost(), worth[a], bars.get(b).cost(), worth[b])).toList();
		BigInteger missing = need;
		long cost = 0;
		for (int k : order) {
			BigInteger each = BigInteger.valueOf(worth[k]);
			BigInteger all = each.multiply(BigInteger.valueOf(bars.get(k).limit()));
			if (missing.signum() <= 0) {
				return cost;
			}
			if (all.compareTo(missing) >= 0) {
				BigInteger[] part = missing.multiply(BigInteger.valueOf(bars.get(k).cost())).divideAndRemainder(each);
				return Math.addExact(cost, part[0].longValueExact()) + (part[1].signum() > 0 ? 1 : 0);
			}
			missing = missing.subtract(all);
			cost = Math.addExact(cost, Math.multiplyExact(bars.get(k).cost(), bars.get(k).limit()));
		}
		return cost;
	}

	private static int compareRates(long costA, long worthA, long costB, long worthB) {
		return BigInteger.valueOf(costA).multiply(BigInteger.valueOf(worthB))
			.compareTo(BigInteger.valueOf(costB).multiply(BigInteger.valueOf(worthA)));
	}
}
