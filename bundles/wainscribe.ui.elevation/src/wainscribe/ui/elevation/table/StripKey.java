// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.elevation.table;

import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.IntStream;

import wainscribe.layout.RoomDesign;
import wainscribe.layout.StripKind;
import wainscribe.layout.StripOutline;
import wainscribe.layout.Tier;
import wainscribe.model.Wall;

/**
 * A batten or board as the designer points at it: the third batten of the lower tier of this wall. Strips are computed anew
 * after each edit; the key stays the same, and with it what is selected.
 *
 * @param wall  the wall
 * @param tier  the tier
 * @param kind  what it is
 * @param index place among those of its kind in the tier, from 0
 */
public record StripKey(Wall wall, Tier tier, StripKind kind, int index) {

	/** Refuses nulls. */
	public StripKey {
		Objects.requireNonNull(wall);
		Objects.requireNonNull(tier);
		Objects.requireNonNull(kind);
	}

	/** Returns the keys of all strips of a wall. */
	public static List<StripKey> of(RoomDesign design, Wall wall) {
		return Arrays.stream(Tier.values()).flatMap(tier -> Arrays.stream(StripKind.values())
				.flatMap(kind -> IntStream.range(0, strips(design, wall, tier, kind).size())
						.mapToObj(index -> new StripKey(wall, tier, kind, index))))
				.toList();
	}

	/** Finds the strip in a design; empty if the design has fewer. */
	public Optional<StripOutline> in(RoomDesign design) {
		return strips(design, wall, tier, kind).stream().skip(index).findFirst();
	}

	private static List<StripOutline> strips(RoomDesign design, Wall wall, Tier tier, StripKind kind) {
		return design.layout().of(wall).stream().flatMap(layout -> layout.strips())
				.filter(strip -> strip.tier() == tier && strip.kind() == kind).toList();
	}
}
