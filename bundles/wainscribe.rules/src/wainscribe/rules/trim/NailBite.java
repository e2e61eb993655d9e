// SPDX-License-Identifier: EPL-2.0
package wainscribe.rules.trim;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import wainscribe.layout.EffectiveBrief;
import wainscribe.model.Wall;
import wainscribe.model.length.Length;
import wainscribe.rules.RuleContext;
import wainscribe.rules.measure.AddedBoard;
import wainscribe.rules.measure.Strip;
import wainscribe.rules.measure.WallStrips;

/**
 * How far the nails go into the framing of one wall.
 *
 * @param wall      the wall
 * @param moulding  thickness of the moulding nailed through
 * @param board     all boarding between moulding and framing
 * @param boardKnown whether the wallboard was measured; if not, board holds only what is added
 * @param bite      nail less moulding less board
 */
record NailBite(Wall wall, Length moulding, Length board, boolean boardKnown, Length bite) {

	/** Returns the deepest bite on each wall that takes moulding: through its thinnest one. Empty if no nail is decided. */
	static List<NailBite> deepest(RuleContext context) {
		List<NailBite> found = new ArrayList<>();
		for (Wall wall : context.walls()) {
			thinnest(WallStrips.of(context.design(), wall).all())
					.flatMap(moulding -> of(context, wall, moulding)).ifPresent(found::add);
		}
		return found;
	}

	/** Returns the bite through the rail on each wall that has one. Empty if no nail is decided. */
	static List<NailBite> ofRail(RuleContext context) {
		List<NailBite> found = new ArrayList<>();
		for (Wall wall : context.walls()) {
			thinnest(WallStrips.of(context.design(), wall).rail())
					.flatMap(moulding -> of(context, wall, moulding)).ifPresent(found::add);
		}
		return found;
	}

	private static Optional<Length> thinnest(List<Strip> strips) {
		return strips.stream().map(Strip::thickness).min(Length::compareTo);
	}

	private static Optional<NailBite> of(RuleContext context, Wall wall, Length moulding) {
		EffectiveBrief brief = context.design().brief();
		if (brief.nail() == null) {
			return Optional.empty();
		}
		boolean known = wall.getWallboard() != null;
		Length board = AddedBoard.on(wall, brief).plus(known ? wall.getWallboard() : Length.ZERO);
		return Optional.of(new NailBite(wall, moulding, board, known, brief.nail().minus(moulding).minus(board)));
	}
}
