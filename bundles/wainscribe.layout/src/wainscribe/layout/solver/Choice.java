// SPDX-License-Identifier: EPL-2.0
package wainscribe.layout.solver;

/**
 * Numbers of frames for one run, or for two runs with the same ends in the two tiers.
 *
 * @param lower  frames of the run in the lower tier, 0 where it belongs to the upper alone
 * @param upper  frames of the run in the upper tier, 0 where it belongs to the lower alone
 * @param rank   what it costs in the first five terms
 * @param widths frame widths that have a say in the module, finer than units, see {@link Module}
 */
record Choice(int lower, int upper, long rank, long[] widths) {

	int frames() {
		return lower + upper;
	}

	Choice with(Choice other) {
		long[] both = new long[widths.length + other.widths.length];
		System.arraycopy(widths, 0, both, 0, widths.length);
		System.arraycopy(other.widths, 0, both, widths.length, other.widths.length);
		return new Choice(lower + other.lower, upper + other.upper, rank + other.rank, both);
	}
}
