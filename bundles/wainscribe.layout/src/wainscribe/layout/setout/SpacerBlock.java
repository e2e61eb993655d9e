// SPDX-License-Identifier: EPL-2.0
package wainscribe.layout.setout;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

import wainscribe.layout.RoomLayout;
import wainscribe.layout.WallLayout;
import wainscribe.model.length.Length;
import wainscribe.model.length.LengthUnit;

/**
 * A block or stick to cut, that holds a distance while mouldings are put up. It serves one distance at a time; the marks stay
 * what decides, as sizes that were rounded add up along a wall.
 *
 * @param use   what it holds
 * @param exact the distance
 * @param size  what it is cut to: the distance rounded once to the tape
 * @param walls names of the walls it serves, in walking order
 */
public record SpacerBlock(Use use, Length exact, Length size, List<String> walls) {

	/** What a block holds. */
	public enum Use {
		/** The gap between neighbouring frames and at the ends of runs. */
		GAP,
		/** The gap above and below frames. */
		VERTICAL_GAP,
		/** The underside of the rail above the floor. */
		RAIL_HEIGHT
	}

	private record Key(Use use, Length size) {
	}

	/** Refuses nulls and copies the list. */
	public SpacerBlock {
		Objects.requireNonNull(use);
		Objects.requireNonNull(exact);
		Objects.requireNonNull(size);
		walls = List.copyOf(walls);
	}

	/**
	 * Returns the blocks of a room, those for gaps first: one for each size that its runs are left with once their frames are
	 * cut to one width, one for the gap above and below, and a stick for the rail.
	 *
	 * @param layout the layout of a room
	 * @param units  unit of the tape
	 */
	public static List<SpacerBlock> of(RoomLayout layout, LengthUnit units) {
		Map<Key, SpacerBlock> blocks = new LinkedHashMap<>();
		for (WallLayout wall : layout.walls()) {
			SetOut.of(wall, units).runs().stream().flatMap(run -> run.gapLeft().stream())
					.forEach(gap -> add(Use.GAP, gap, units, wall, blocks));
		}
		layout.walls().stream().filter(wall -> wall.frames().findAny().isPresent())
				.forEach(wall -> add(Use.VERTICAL_GAP, layout.gapY(), units, wall, blocks));
		layout.rail().ifPresent(
				rail -> layout.walls().forEach(wall -> add(Use.RAIL_HEIGHT, rail.bottom(), units, wall, blocks)));
		return List.copyOf(blocks.values());
	}

	private static void add(Use use, Length exact, LengthUnit units, WallLayout layout, Map<Key, SpacerBlock> blocks) {
		String wall = layout.wall().getName() == null ? "" : layout.wall().getName(); //$NON-NLS-1$
		Length size = exact.roundedTo(units.tapeMark());
		blocks.merge(new Key(use, size), new SpacerBlock(use, exact, size, List.of(wall)), (one, more) -> {
			List<String> walls = new ArrayList<>(one.walls());
			if (!walls.contains(wall)) {
				walls.add(wall);
			}
			return new SpacerBlock(use, one.exact(), size, walls);
		});
	}
}
