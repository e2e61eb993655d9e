// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.properties;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

import org.eclipse.emf.ecore.EAttribute;

import wainscribe.layout.EffectiveBrief;
import wainscribe.model.WainscribePackage.Literals;

/** Which part of a resolved brief answers to which decision. */
final class EffectiveDecisions {

	private static final Map<EAttribute, Function<EffectiveBrief, Object>> EFFECTIVE = Map.ofEntries(
		Map.entry(Literals.BRIEF__PATTERN, EffectiveBrief::pattern),
		Map.entry(Literals.BRIEF__MATERIAL, EffectiveBrief::material),
		Map.entry(Literals.BRIEF__RAIL, EffectiveBrief::railTop),
		Map.entry(Literals.BRIEF__RAIL_FACE, brief -> brief.rail().face()),
		Map.entry(Literals.BRIEF__RAIL_THICKNESS, brief -> brief.rail().thickness()),
		Map.entry(Literals.BRIEF__GAP, EffectiveBrief::fixedGap),
		Map.entry(Literals.BRIEF__GAP_Y, EffectiveBrief::fixedGapY),
		Map.entry(Literals.BRIEF__FACE, brief -> brief.frame().face()),
		Map.entry(Literals.BRIEF__THICKNESS, brief -> brief.frame().thickness()),
		Map.entry(Literals.BRIEF__FRAME_WIDTH_MIN, EffectiveBrief::widthMin),
		Map.entry(Literals.BRIEF__FRAME_WIDTH_MAX, EffectiveBrief::widthMax),
		Map.entry(Literals.BRIEF__BASE, EffectiveBrief::base),
		Map.entry(Literals.BRIEF__CROWN, EffectiveBrief::crown),
		Map.entry(Literals.BRIEF__BOARD, EffectiveBrief::board),
		Map.entry(Literals.BRIEF__BOARD_WALLS, brief -> listOrNull(List.copyOf(brief.boardWalls()))),
		Map.entry(Literals.BRIEF__STOCK, brief -> listOrNull(brief.stock())),
		Map.entry(Literals.BRIEF__NAIL, EffectiveBrief::nail));

	private EffectiveDecisions() {
	}

	/** Returns what holds; empty where the layout chooses, the joints follow common practice or nothing is known. */
	static Optional<Object> of(EffectiveBrief brief, EAttribute decision) {
		return Optional.ofNullable(EFFECTIVE.getOrDefault(decision, none -> null).apply(brief));
	}

	private static Object listOrNull(List<?> list) {
		return list.isEmpty() ? null : list;
	}
}
