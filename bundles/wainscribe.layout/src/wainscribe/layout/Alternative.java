// SPDX-License-Identifier: EPL-2.0
package wainscribe.layout;

import java.util.List;

import wainscribe.model.length.Length;

/**
 * Another layout worth showing.
 *
 * @param sentence  what is different, for the designer
 * @param gap       its gap
 * @param rail      its rail, null for a pattern without one
 * @param objective its terms
 * @param walls     its walls in walking order
 */
public record Alternative(String sentence, Length gap, RailBand rail, Objective objective, List<WallLayout> walls) {

	/** Copies the list. */
	public Alternative {
		walls = List.copyOf(walls);
	}
}
