// SPDX-License-Identifier: EPL-2.0
package wainscribe.benchmarks.general;

/**
 * Puts terms that are compared in order into as few int variables as hold them, because fewer objectives are quicker for a
 * general solver: each digit is a sum of terms with factors, the earlier terms with the larger ones.
 */
final class Digits {

	/** The general solver's ints end a little above. */
	private static final long LARGEST = 20_000_000;

	private final int[] digitOf;
	private final int[] factors;
	private final int count;

	/**
	 * Creates digits.
	 *
	 * @param bounds the greatest value of each term over a whole room
	 */
	Digits(long[] bounds) {
		digitOf = new int[bounds.length];
		factors = new int[bounds.length];
		int digit = 0;
		long size = 1;
		for (int t = bounds.length - 1; t >= 0; t--) {
			if (size > 1 && size * (bounds[t] + 1) > LARGEST) {
				digit++;
				size = 1;
			}
			digitOf[t] = digit;
			factors[t] = (int) size;
			size *= bounds[t] + 1;
		}
		count = digit + 1;
		for (int t = 0; t < bounds.length; t++) {
			digitOf[t] = count - 1 - digitOf[t];
		}
	}

	/** Returns the number of digits. */
	int count() {
		return count;
	}

	/** Returns the digits of some terms, those that count most first. */
	int[] of(long... terms) {
		int[] digits = new int[count];
		for (int t = 0; t < terms.length; t++) {
			digits[digitOf[t]] = Math.toIntExact(digits[digitOf[t]] + terms[t] * factors[t]);
		}
		return digits;
	}

	/** Returns the terms whose digits these are. */
	long[] terms(int[] digits) {
		int[] left = digits.clone();
		long[] terms = new long[digitOf.length];
		for (int t = 0; t < terms.length; t++) {
			terms[t] = left[digitOf[t]] / factors[t];
			left[digitOf[t]] %= factors[t];
		}
		return terms;
	}
}
