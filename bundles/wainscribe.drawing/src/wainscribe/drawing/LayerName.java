// SPDX-License-Identifier: EPL-2.0
package wainscribe.drawing;

/** The layers of an elevation, in the order in which they are painted. */
public enum LayerName {
	/** Outline of the wall, floor and ceiling line. */
	WALL("WALL"),
	/** What lies in the cut: floor and ceiling. */
	HATCH("HATCH"),
	/** Mouldings that are there and stay. */
	TRIM_EXISTING("TRIM-EXISTING"),
	/** New base. */
	BASE("BASE"),
	/** New rail. */
	RAIL("RAIL"),
	/** New crown. */
	CROWN("CROWN"),
	/** Panel frames. */
	FRAME("FRAME"),
	/** Battens and the boards of a grid. */
	STRIP("STRIP"),
	/** Doors and windows with their casings. */
	OPENING("OPENING"),
	/** Fixtures. */
	FIXTURE("FIXTURE"),
	/** Plates of electrical boxes. */
	BOX("BOX"),
	/** Studs, pipes and cables in the wall. */
	SERVICE("SERVICE"),
	/** Dimension strings. */
	DIMENSION("DIMENSION"),
	/** Names. */
	TEXT("TEXT"),
	/** Labels of the pieces to cut, small and quiet. */
	PIECE("PIECE");

	private final String id;

	LayerName(String id) {
		this.id = id;
	}

	/** Returns the name in files, letters and hyphens only. */
	public String id() {
		return id;
	}
}
