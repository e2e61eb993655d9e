// SPDX-License-Identifier: EPL-2.0
package wainscribe.layout.site;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

import wainscribe.layout.StripKind;
import wainscribe.layout.StripOutline;
import wainscribe.layout.Tier;
import wainscribe.layout.solver.Layout;
import wainscribe.layout.solver.Quad;
import wainscribe.layout.solver.StripSizes;
import wainscribe.model.length.Length;

/**
 * Writes the strips of a wall with names: upright ones like frames by wall, tier and number from the left, {@code A-L2}; level
 * ones with an R before the number, {@code A-LR2}.
 */
final class StripAssembly {

	private final String wallName;
	private final StripKind upright;
	private final Map<Tier, Map<Boolean, Integer>> numbers = new HashMap<>();

	StripAssembly(String wallName, StripSizes sizes) {
		this.wallName = wallName;
		upright = sizes.boardsAtEnds() || sizes.isGrid() ? StripKind.STILE : StripKind.BATTEN;
	}

	/** Returns the strips of a run; those under and over openings get their names by {@link #numbered}. */
	List<StripOutline> of(Tier tier, Layout.Run run) {
		List<StripOutline> strips = new ArrayList<>();
		run.frames().forEach(quad -> strips.add(strip(tier, upright, quad)));
		run.rails().forEach(quad -> strips.add(strip(tier, StripKind.RAIL, quad)));
		return tier == Tier.UNDER || tier == Tier.OVER ? strips : numbered(strips);
	}

	/** Gives strips their names, in their order. */
	List<StripOutline> numbered(List<StripOutline> strips) {
		return strips.stream().map(strip -> new StripOutline(id(strip.tier(), strip.kind()), strip.tier(), strip.kind(), strip.x(),
				strip.y(), strip.width(), strip.height(), strip.rise(), strip.riseTop())).toList();
	}

	private String id(Tier tier, StripKind kind) {
		int number = numbers.computeIfAbsent(tier, key -> new HashMap<>()).merge(kind.isUpright(), 1, Integer::sum);
		return wallName + '-' + WallAssembly.letter(tier) + (kind.isUpright() ? "" : "R") + number; //$NON-NLS-1$ //$NON-NLS-2$
	}

	private static StripOutline strip(Tier tier, StripKind kind, Quad quad) {
		return new StripOutline("", tier, kind, new Length(quad.x()), new Length(quad.y()), new Length(quad.width()), //$NON-NLS-1$
				new Length(quad.height()), new Length(quad.rise()), new Length(quad.riseTop()));
	}
}
