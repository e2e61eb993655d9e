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
 * @param strips     sizes of strips that fill the tiers, null for frames
 */
public record RoomTask(List<WallTask> walls, Limits limits, long gapY, long defaultGap, List<Long> gaps,
		List<Long> wideGaps, StripSizes strips) {

	private static final List<Integer> ONE_ROW = List.of(1);

	/** Creates a problem of frames. */
	public RoomTask(List<WallTask> walls, Limits limits, long gapY, long defaultGap, List<Long> gaps, List<Long> wideGaps) {
		this(walls, limits, gapY, defaultGap, gaps, wideGaps, null);
	}

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

	/** Returns the numbers of rows of fields to choose from; one row for frames. */
	public List<Integer> rows() {
		return strips == null ? ONE_ROW : strips.rows();
	}

	/** Returns what may fill a tier. */
	RunFit fit(WallTask wall, Band band, long gap, int rows) {
		return strips == null ? new FrameFit(limits, wall.islands(), band.bottom(), band.top(), gap, vertical(gap))
				: new StripFit(limits, strips, wall.islands(), band, rows);
	}

	/** Returns the vertical gap that belongs to a gap. */
	public long vertical(long gap) {
		return gapY < 0 ? gap : gapY;
	}
}
