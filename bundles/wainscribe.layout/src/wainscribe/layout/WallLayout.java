// SPDX-License-Identifier: EPL-2.0
package wainscribe.layout;

import java.util.List;
import java.util.stream.Stream;

import wainscribe.model.Wall;

/**
 * What a layout puts on one wall.
 *
 * @param wall the wall as surveyed
 * @param runs by tier, then from left to right
 */
public record WallLayout(Wall wall, List<RunLayout> runs) {

	/** Copies the list. */
	public WallLayout {
		runs = List.copyOf(runs);
	}

	/** Returns all frames of the wall. */
	public Stream<FrameOutline> frames() {
		return runs.stream().flatMap(run -> run.frames().stream());
	}

	/** Returns all strips of the wall. */
	public Stream<StripOutline> strips() {
		return runs.stream().flatMap(run -> run.strips().stream());
	}

	/** Returns all frames and strips of the wall, run by run. */
	public Stream<Member> members() {
		return runs.stream().flatMap(RunLayout::members);
	}
}
