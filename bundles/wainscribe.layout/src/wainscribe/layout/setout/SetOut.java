// SPDX-License-Identifier: EPL-2.0
package wainscribe.layout.setout;

import java.util.List;
import java.util.Objects;

import wainscribe.layout.WallLayout;
import wainscribe.model.Wall;
import wainscribe.model.length.LengthUnit;

/**
 * What to mark on one wall, all measured from one datum: along the wall from its left end, upwards from the finished floor
 * there. Every mark is an exact position rounded once, so errors do not add up along the wall: no mark is off by more than
 * half a mark of the tape.
 *
 * @param wall   the wall
 * @param runs   runs that have frames, in the order of the layout
 * @param strips strips, in the order of the layout
 */
public record SetOut(Wall wall, List<RunMarks> runs, List<StripMarks> strips) {

	/** Refuses null and copies the lists. */
	public SetOut {
		Objects.requireNonNull(wall);
		runs = List.copyOf(runs);
		strips = List.copyOf(strips);
	}

	/**
	 * Sets out a wall.
	 *
	 * @param layout the wall's layout
	 * @param units  unit of the tape: marks are 1/16 in or 1 mm apart
	 */
	public static SetOut of(WallLayout layout, LengthUnit units) {
		return new SetOut(layout.wall(), layout.runs().stream().filter(run -> !run.frames().isEmpty())
				.map(run -> RunMarks.of(run, units)).toList(), layout.strips().map(strip -> StripMarks.of(strip, units)).toList());
	}
}
