// SPDX-License-Identifier: EPL-2.0
package wainscribe.layout;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

import wainscribe.model.Material;
import wainscribe.model.ProfileUse;
import wainscribe.model.length.Length;
import wainscribe.model.length.LengthUnit;

/**
 * All decisions that hold for a room: its own brief, then the home's, then the defaults of common practice.
 *
 * @param units      unit of the home
 * @param pattern    id of the wall pattern, or {@code none}
 * @param railTop    top of the rail
 * @param rail       face and projection of the rail
 * @param fixedGap   gap asked for, null when the layout may choose
 * @param fixedGapY  vertical gap asked for, null when it is as the gap
 * @param frame      the frame moulding
 * @param widthMin   least frame width wished, null when none
 * @param widthMax   greatest frame width wished, null when none
 * @param base       face height of the base, where none is kept
 * @param crown      drop of the crown, where none is kept; zero for none
 * @param material   what the mouldings are made of
 * @param stock      lengths in which mouldings are sold; empty when not known
 * @param nail       nail length, null when not decided
 * @param board      thickness of boarding added to walls; zero for none
 * @param boardWalls names of the boarded walls
 * @param profiles   ids of the profiles chosen for a use
 */
public record EffectiveBrief(LengthUnit units, String pattern, Length railTop, MouldingSection rail, Length fixedGap,
		Length fixedGapY, MouldingSection frame, Length widthMin, Length widthMax, Length base, Length crown,
		Material material, List<Length> stock, Length nail, Length board, Set<String> boardWalls,
		Map<ProfileUse, String> profiles) {

	/** Copies the collections. */
	public EffectiveBrief {
		stock = List.copyOf(stock);
		boardWalls = Set.copyOf(boardWalls);
		profiles = Map.copyOf(profiles);
	}

	/** Returns the gap asked for; empty when the layout may choose. */
	public Optional<Length> gap() {
		return Optional.ofNullable(fixedGap);
	}

	/** Returns the longest stock length, if any is known. */
	public Optional<Length> longestStock() {
		return stock.stream().max(Length::compareTo);
	}

	/** Returns a copy with another pattern. */
	public EffectiveBrief withPattern(String other) {
		return new EffectiveBrief(units, other, railTop, rail, fixedGap, fixedGapY, frame, widthMin, widthMax, base, crown,
				material, stock, nail, board, boardWalls, profiles);
	}

	/** Returns a copy with another height of the rail's top. */
	public EffectiveBrief withRailTop(Length other) {
		return new EffectiveBrief(units, pattern, other, rail, fixedGap, fixedGapY, frame, widthMin, widthMax, base, crown,
				material, stock, nail, board, boardWalls, profiles);
	}

	/** Returns a copy with another gap; null lets the layout choose. */
	public EffectiveBrief withGap(Length other) {
		return new EffectiveBrief(units, pattern, railTop, rail, other, fixedGapY, frame, widthMin, widthMax, base, crown,
				material, stock, nail, board, boardWalls, profiles);
	}

	/** Returns a copy with another frame moulding. */
	public EffectiveBrief withFrame(MouldingSection other) {
		return new EffectiveBrief(units, pattern, railTop, rail, fixedGap, fixedGapY, other, widthMin, widthMax, base, crown,
				material, stock, nail, board, boardWalls, profiles);
	}
}
