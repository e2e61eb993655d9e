// SPDX-License-Identifier: EPL-2.0
package wainscribe.layout.solver;

import java.util.List;

/**
 * The layout problem of a room: numbers only, in units of 1/8000 mm.
 *
 * @param walls      the walls in walking order
 * @param limits     sizes of frames
 * @param gapY       the vertical gap, or negative when it is as the gap
 * @param defaultGap the gap from which the shift is measured
 * @param gaps       the gaps to choose from, ascending; one when it was asked for
 * @param wideGaps   the gaps to choose from when a stretch stays plain with {@code gaps}; empty for none
 */
public record RoomTask(List<WallTask> walls, Limits limits, long gapY, long defaultGap, List<Long> gaps,
		List<Long> wideGaps) {

	/** Copies the lists. */
	public RoomTask {
		walls = List.copyOf(walls);
		gaps = List.copyOf(gaps);
		wideGaps = List.copyOf(wideGaps);
	}

	/** Tells whether no count of any layout can outgrow the room it has in a {@link Rank}. */
	public boolean isCountable() {
		return walls.stream().mapToInt(wall -> wall.bands().size() * (wall.barriers().size() + wall.islands().size() + 1))
				.sum() <= Rank.MOST_THINGS;
	}

	/** Returns the vertical gap that belongs to a gap. */
	public long vertical(long gap) {
		return gapY < 0 ? gap : gapY;
	}
}
