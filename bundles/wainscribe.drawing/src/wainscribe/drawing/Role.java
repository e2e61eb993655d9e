// SPDX-License-Identifier: EPL-2.0
package wainscribe.drawing;

/** What a shape is for; a {@link StyleTable} gives each role its look. */
public enum Role {
	/** Face of the wall above the rail, or the whole wall. */
	WALL_FACE,
	/** Face of the wall below the rail. */
	WALL_FACE_LOWER,
	/** Outline of the wall. */
	WALL_EDGE,
	/** The floor line. */
	FLOOR_LINE,
	/** What is cut: floor and ceiling. */
	CUT,
	/** Facet of a moulding turned to the light. */
	RELIEF_BRIGHT,
	/** Facet of a moulding that gets much light. */
	RELIEF_LIGHT,
	/** Facet of a moulding that faces the viewer. */
	RELIEF_PLAIN,
	/** Facet of a moulding that gets little light. */
	RELIEF_SHADE,
	/** Facet of a moulding turned away from the light. */
	RELIEF_DEEP,
	/** Edge of a moulding. */
	TRIM_EDGE,
	/** Mitre or arris of a moulding. */
	TRIM_ARRIS,
	/** Moulding that is there and stays. */
	TRIM_EXISTING,
	/** Field inside a frame. */
	FIELD,
	/** Casing, stool and apron of an opening. */
	CASING,
	/** Leaf of a door. */
	LEAF,
	/** Glass. */
	GLASS,
	/** Line on an opening: bars, swing. */
	OPENING_LINE,
	/** Dashed line that shows how a leaf swings. */
	SWING,
	/** Body of a fixture. */
	FIXTURE,
	/** Body of a fixture that is not there yet. */
	FIXTURE_PLANNED,
	/** Lines on a fixture. */
	FIXTURE_LINE,
	/** Metal of a fixture: bars, hooks, taps. */
	FIXTURE_METAL,
	/** Mirror or other glass of a fixture. */
	FIXTURE_GLASS,
	/** Dark opening: grille slots, fire opening. */
	FIXTURE_DARK,
	/** Plate of an electrical box. */
	PLATE,
	/** Lines on a plate. */
	PLATE_LINE,
	/** Stud in the wall. */
	STUD,
	/** Pipe in the wall. */
	PIPE,
	/** Cable in the wall. */
	CABLE,
	/** Lines of dimensions. */
	DIMENSION_LINE,
	/** Text of dimensions. */
	DIMENSION_TEXT,
	/** Name of the wall. */
	TITLE,
	/** Names of frames and elements. */
	NOTE
}
