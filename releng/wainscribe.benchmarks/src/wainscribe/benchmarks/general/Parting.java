// SPDX-License-Identifier: EPL-2.0
package wainscribe.benchmarks.general;

import java.util.List;

/**
 * A way to part a tier into runs: some of its window anchors kept, some of its islands made blockers.
 *
 * @param terms  plain, splits, anchors dropped, near, out of band, without those of the runs
 * @param frames anchors and bays
 * @param runs   left and right end of each run
 */
record Parting(int[] terms, int frames, List<long[]> runs) {
}
