// SPDX-License-Identifier: EPL-2.0
package wainscribe.layout.solver;

import java.util.List;

/**
 * A step of a {@link WallGraph}: one tier goes on to its next cut, or both do when their runs have the same ends.
 *
 * @param from    state before
 * @param to      state after
 * @param rank    what the cut costs whatever is chosen: skipped anchors, splits, near distances of an anchor
 * @param frames  anchors it sets
 * @param choices numbers of frames for the run before the cut
 */
record Transition(int from, int to, long rank, int frames, List<Choice> choices) {
}
