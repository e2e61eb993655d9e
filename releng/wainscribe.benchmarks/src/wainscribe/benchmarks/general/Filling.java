// SPDX-License-Identifier: EPL-2.0
package wainscribe.benchmarks.general;

/**
 * A number of frames for a run.
 *
 * @param n         the number, 0 for none
 * @param terms     plain, splits, anchors dropped, near, out of band
 * @param total     length that the frames share
 * @param hasSay    whether the width counts for the module
 */
record Filling(int n, int[] terms, long total, boolean hasSay) {
}
