// SPDX-License-Identifier: EPL-2.0
package wainscribe.rules.measure;

import wainscribe.layout.EffectiveBrief;
import wainscribe.model.Wall;
import wainscribe.model.length.Length;

/** The boarding that the brief adds to a wall. */
public final class AddedBoard {

	private AddedBoard() {
	}

	/** Returns its thickness; zero where none is added. A board without named walls goes on all of them. */
	public static Length on(Wall wall, EffectiveBrief brief) {
		boolean boarded = brief.boardWalls().isEmpty() || wall.getName() != null && brief.boardWalls().contains(wall.getName());
		return boarded && brief.board() != null ? brief.board() : Length.ZERO;
	}
}
